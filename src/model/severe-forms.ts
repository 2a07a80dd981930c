/** The milder form that a severe condition includes, for conditions of which only the degree differs. */
export const severeForms: readonly { readonly mild: string; readonly severe: string }[] = [
  { mild: 'reflux', severe: 'severe-reflux' },
  { mild: 'oesophagitis', severe: 'severe-oesophagitis' },
  { mild: 'hiatal-hernia', severe: 'large-hiatal-hernia' },
];
