/** Lengths are in points, 72 to the inch. */
export type Weight = 400 | 600 | 700;

export interface TypeRole {
  readonly size: number;
  readonly lineHeight: number;
  readonly weight: Weight;
}

export function role(size: number, lineHeight: number, weight: Weight): TypeRole {
  return { size, lineHeight, weight };
}

export type RoleName =
  | 'decision'
  | 'pageTitle'
  | 'topic'
  /** The question of a topic where it stands again on a later page. */
  | 'continued'
  | 'lean'
  | 'number'
  | 'smallHeading'
  | 'tableNumber'
  | 'lead'
  | 'body'
  | 'strong'
  | 'cell'
  | 'name'
  | 'tableHead'
  | 'small'
  | 'label'
  | 'labelStrong'
  /** Frames of warning signs: their heads, what they list, the clinic's numbers and the one for an emergency. */
  | 'frameHead'
  | 'frameItem'
  | 'phone'
  | 'emergency'
  /** A day of the calendar. */
  | 'dayNote'
  /** Title of a page that hangs on a fridge. */
  | 'fridgeTitle'
  /** What stands above and below the body of a page, and on the edges of a draft. */
  | 'header'
  | 'footer'
  | 'edge';

export type TypeScale = Readonly<Record<RoleName, TypeRole>>;

export interface Space {
  readonly betweenTopics: number;
  readonly afterCover: number;
  readonly betweenBlocks: number;
  readonly afterPageTitle: number;
  readonly afterSmallHeading: number;
  readonly topicRule: number;
  readonly ruleToQuestion: number;
  readonly questionToIntro: number;
  readonly headToRows: number;
  /** By how much that may close up to save a page. */
  readonly headShrink: number;
  readonly betweenParagraphs: number;
  readonly cellPadding: number;
  /** The part of it under a row that may be closed up to save a page. */
  readonly cellShrink: number;
  readonly betweenSteps: number;
  readonly betweenBullets: number;
  /** Items of a list in small type. */
  readonly betweenNotes: number;
  /** A key or a note and the strip or table it explains. */
  readonly noteAfterStrip: number;
  /** Frames of warning signs, and what to say below them; the part that may be closed up to save a page. */
  readonly betweenFrames: number;
  readonly frameShrink: number;
  /** Signs of a frame, one under another. */
  readonly betweenSigns: number;
}

/** Strokes. */
export interface Rules {
  readonly tableHead: number;
  readonly tableTop: number;
  readonly row: number;
  readonly facts: number;
}

/**
 * Where the body of a page begins and what is kept for the footer below it, at least, from the edges of the paper. More
 * lines of a header or footer take more.
 */
export interface PageFrame {
  readonly bodyTop: number;
  readonly belowBody: number;
  /** White between a header of more than one line and the body. */
  readonly underHeader: number;
  /** Lines of a footer that has no more than usual. */
  readonly footerLines: number;
  /** Top of the header, and what stays white under the footer: less where it has more lines than usual. */
  readonly header: number;
  readonly footer: number;
  readonly tallFooter: number;
  /** White between a footer of more lines than it keeps room for and the body. */
  readonly overFooter: number;
  /** From the sides of the paper to the edges of a draft, which stand in the margin. */
  readonly edgeInset: number;
}

/** How pages are set: every size that tells one edition from another. */
export interface Edition {
  readonly edition: 'standard' | 'large-print' | 'clinician';
  readonly density: 'patient' | 'clinician';
  /** Whether what belongs together stands side by side or one under another. */
  readonly flow: 'beside' | 'stacked';
  /** Boxes, bullets, indents and small drawings, as a multiple of their size on a patient's page of 13 points. */
  readonly scale: number;
  /** Content width; the side margins take the rest of either paper. */
  readonly width: number;
  /** Room for a name and its tag. */
  readonly nameWidth: number;
  /** Prose measure: at most some 62 characters of body type. */
  readonly measure: number;
  readonly type: TypeScale;
  readonly space: Space;
  readonly rules: Rules;
  readonly page: PageFrame;
}
