/** Words as they are printed: the markup of a text has bold marks and three escapes only. */
export function plainWords(markup: string): string {
  return markup
    .replace(/<\/?b>/g, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&');
}
