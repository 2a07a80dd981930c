import { palette } from '../../pictures/palette.ts';

export const tableStyle = `
table { border-collapse: collapse; inline-size: 100%; }
th, td { text-align: start; vertical-align: top; padding-block: .625rem; padding-inline: 0 1rem; font-weight: 400; line-height: 1.35; }
th:last-child, td:last-child { padding-inline-end: 0; }
thead th { font-weight: 600; vertical-align: bottom; border-block-end: .125rem solid ${palette.ink}; text-wrap: balance; }
thead td { border-block-end: .125rem solid ${palette.ink}; }
tbody th { font-weight: 400; }
tbody tr + tr > *, tbody + tbody tr:first-child > * { border-block-start: .0625rem solid ${palette.line}; }
.choices tbody th { font-weight: 700; inline-size: 9rem; padding-inline-end: 1rem; }
.choices .number { font-size: 1.25rem; }
td p + p, th p + p { margin-block-start: .125rem; }
.at-end { text-align: end; }
.group th { background: ${palette.pale}; font-weight: 700; padding: .375rem .5rem; }
.dense { font-size: 1rem; }
.dense th, .dense td { padding-block: .5rem; padding-inline-end: .75rem; }
.dense .number { font-size: 1rem; }
.dense .small { font-size: 1rem; }
.boxes tr > * + * { inline-size: 5.5rem; padding-inline-end: .5rem; }
.boxes thead * + * { font-size: 1rem; }
.boxes .box { margin-block-start: .125rem; }
.blank td:first-child { padding-block-start: 1.75rem; }
.talk td:first-child, .talk thead th:first-child { inline-size: 7rem; }
.talk td:last-child, .talk thead th:last-child { inline-size: 7.5rem; }

.tag { display: inline-block; margin-block-start: .25rem; padding: 0 .625rem .0625rem; border: .0625rem solid ${palette.ink}; font-size: 1rem; font-weight: 600; border-start-start-radius: .625rem; border-end-end-radius: .625rem; }

.facts { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 13rem), 1fr)); gap: 1rem 1.5rem; padding-block-start: .75rem; border-block-start: .125rem solid ${palette.ink}; }
.facts dt { font-size: 1rem; }
.facts dd { font-weight: 600; }

article.clinician { font-size: 1rem; }
.clinician h1 { font-size: 1.625rem; }
.clinician h2 { font-size: 1.25rem; }
.clinician .number { font-size: 1rem; }
.clinician .facts { display: flex; flex-wrap: wrap; gap: .75rem 2.5rem; border-block-start-color: ${palette.leaf}; }
`;
