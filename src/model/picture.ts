/** What pictures are drawn from: data, never shapes. Weights are in kg. */
export type Picture =
  | {
      readonly type: 'people';
      readonly of: 100 | 1000;
      readonly filled: number;
      readonly may: number;
      readonly half: boolean;
      readonly alt: string;
    }
  | {
      readonly type: 'range';
      readonly average: number;
      readonly low?: number;
      readonly high?: number;
      readonly meaning: 'spread' | 'uncertainty' | 'none';
      readonly alt: string;
    }
  | { readonly type: 'unknown'; readonly of: 100 | 1000 | 'range'; readonly alt: string }
  | {
      readonly type: 'way-back';
      readonly possible: 'yes' | 'partly' | 'no' | 'not-known';
      readonly alt: string;
    };

export interface Tick {
  /** Position in the unit of the data (kg). */
  readonly at: number;
  readonly label: string;
}

/** One axis shared by all range bars of a strip; min and max in kg. */
export interface Axis {
  readonly min: number;
  readonly max: number;
  readonly today: { readonly at: number; readonly label: string };
  readonly top: { readonly unit: string; readonly ticks: readonly Tick[] };
  readonly bottom?: { readonly unit: string; readonly ticks: readonly Tick[] };
}
