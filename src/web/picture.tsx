import type { ReactElement, ReactNode } from 'react';
import type { Mark, Stroke } from '../pictures/marks.ts';

/** Root ems to a point of a picture: its labels of 12 are then as large as the text, 1.125 rem. */
const remOfPoint = 0.09375;

export function rem(points: number): string {
  return `${String(Math.round(points * remOfPoint * 1000) / 1000)}rem`;
}

export function StrokeOf({ stroke }: { readonly stroke: Stroke }): ReactElement | null {
  if (stroke.path === '') return null;
  return (
    <path
      d={stroke.path}
      fill={stroke.fill ?? 'none'}
      {...(stroke.stroke === undefined ? {} : { stroke: stroke.stroke })}
      {...(stroke.strokeWidth === undefined ? {} : { strokeWidth: stroke.strokeWidth })}
      {...(stroke.dash === undefined ? {} : { strokeDasharray: stroke.dash })}
    />
  );
}

export interface PictureProps {
  readonly width: number;
  readonly height: number;
  /** What those hear who do not see it. Without it the picture is passed over: the words beside it say the same. */
  readonly alt?: { readonly id: string; readonly text: string; readonly title?: string };
  readonly className?: string;
  readonly children: ReactNode;
}

/** A drawing in points that grows with the text of the page and never beyond its column. */
export function Picture({ width, height, alt, className, children }: PictureProps): ReactElement {
  const size = { viewBox: `0 0 ${String(width)} ${String(height)}`, width: rem(width), height: rem(height) };
  const named = className === undefined ? {} : { className };
  if (alt === undefined)
    return (
      <svg {...size} {...named} aria-hidden="true" focusable="false">
        {children}
      </svg>
    );
  return (
    <svg
      {...size}
      {...named}
      role="img"
      aria-labelledby={alt.title === undefined ? alt.id : `${alt.id} ${alt.id}d`}
    >
      <title id={alt.id}>{alt.title ?? alt.text}</title>
      {alt.title === undefined ? null : <desc id={`${alt.id}d`}>{alt.text}</desc>}
      {children}
    </svg>
  );
}

/** A small mark beside words: a box to tick, a sample of a key. */
export function MarkPicture({
  mark,
  className,
}: {
  readonly mark: Mark;
  readonly className?: string;
}): ReactElement {
  return (
    <Picture width={mark.width} height={mark.height} {...(className === undefined ? {} : { className })}>
      {mark.strokes.map((stroke, index) => (
        <StrokeOf key={index} stroke={stroke} />
      ))}
    </Picture>
  );
}
