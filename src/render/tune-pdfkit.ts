import { copyPath } from './copy-path.ts';

/** The methods of pdfkit that are replaced on a document by quicker ones that write the same. */
interface Tuned {
  _font: object;
  _fontSize: number;
  font(source: object, size: number): unknown;
  path(data: string): unknown;
  addContent(operators: string): unknown;
}

/** Takes the repeated work out of a pdfkit document before it is painted on. */
export function tunePdfkit(pdf: Tuned): void {
  rememberFaces(pdf);
  copyPaths(pdf);
}

/** pdfkit opens and compares a face anew for every run of text; here each is opened once a document. */
function rememberFaces(pdf: Tuned): void {
  const openFace = pdf.font.bind(pdf);
  const opened = new Map<object, object>();
  pdf.font = (source, size) => {
    const known = opened.get(source);
    if (known === undefined) {
      openFace(source, size);
      opened.set(source, pdf._font);
    } else {
      pdf._font = known;
      pdf._fontSize = size;
    }
    return pdf;
  };
}

/** pdfkit parses path data letter by letter. */
function copyPaths(pdf: Tuned): void {
  const parsePath = pdf.path.bind(pdf);
  pdf.path = (data) => {
    const operators = copyPath(data);
    return operators === undefined ? parsePath(data) : pdf.addContent(operators);
  };
}
