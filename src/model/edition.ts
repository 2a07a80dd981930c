/** How the pages for the patient are set: in 13 points, or in 18 points and more, with rows and columns stacked. */
export type PrintEdition = 'standard' | 'large-print';
