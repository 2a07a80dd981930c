declare module 'linebreak' {
  /** Chances to break a line by Unicode Standard Annex 14, first to last, the end of the text included. */
  export default class LineBreaker {
    constructor(text: string);
    nextBreak(): { readonly position: number; readonly required: boolean } | null;
  }
}
