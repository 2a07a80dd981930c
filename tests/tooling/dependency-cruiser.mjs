const stages =
  '(input|evidence|compare|localize|compose|reflow|render|web|readability|score|verify|provenance|xliff)';

/** Third-party package → folders that may use it. */
const places = {
  yaml: 'src/(input|evidence|localize|compose)/',
  zod: 'src/(model|input|evidence|compose|localize)/',
  handlebars: 'src/compose/',
  i18next: 'src/localize/',
  react: 'src/(render|web)/',
  'react-dom': 'src/web/',
  parse5: 'src/verify/',
  '@react-pdf': 'src/render/',
  pdfkit: 'src/render/',
  'pdf-parse': 'src/verify/',
  syllable: 'src/readability/',
  '@xmldom': 'src/xliff/',
  tsx: 'src/cli/',
};

const placement = Object.entries(places).map(([name, folder]) => ({
  name: `only-there-${name.replace(/\W/g, '')}`,
  comment: `${name} is used in ${folder} only; elsewhere go through that stage.`,
  severity: 'error',
  from: { path: '^src/', pathNot: `^${folder}` },
  to: { path: `node_modules/(@types/)?${name}(/|$)` },
}));

/** @type {import('dependency-cruiser').IConfiguration} */
export default {
  forbidden: [
    {
      name: 'stage-isolation',
      comment: 'Stages never import each other. Put what two of them share into src/model.',
      severity: 'error',
      from: { path: `^src/${stages}/` },
      to: { path: `^src/${stages}/`, pathNot: '^src/$1/' },
    },
    {
      name: 'stage-below-pipeline',
      comment:
        'A stage knows only itself, model and diagnostics, and io as a type. The order is known to src/pipeline.ts.',
      severity: 'error',
      from: { path: `^src/${stages}/` },
      to: { path: '^src/(pipeline\\.ts|index\\.ts|batch/|cli/)' },
    },
    {
      name: 'io-as-type-only',
      comment: 'A stage may name the Workspace type; it never opens a file itself.',
      severity: 'error',
      from: { path: `^src/${stages}/` },
      to: { path: '^src/io/', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'kernel-is-leaf',
      comment: 'diagnostics imports nothing of src; model imports only model and diagnostics.',
      severity: 'error',
      from: { path: '^src/(diagnostics|model)/' },
      to: { path: '^src/', pathNot: '^src/(diagnostics|model)/' },
    },
    {
      name: 'pictures-are-shapes',
      comment: 'pictures turns data into paths for every renderer; it imports model only.',
      severity: 'error',
      from: { path: '^src/pictures/' },
      to: { path: '^src/', pathNot: '^src/(pictures|model)/' },
    },
    {
      name: 'diagnostics-is-leaf',
      comment: 'diagnostics imports nothing of src.',
      severity: 'error',
      from: { path: '^src/diagnostics/' },
      to: { path: '^src/', pathNot: '^src/diagnostics/' },
    },
    {
      name: 'fs-only-in-io',
      comment:
        'Files, processes and the network are touched in src/io and src/cli only, so that every stage is pure. Ask the Workspace.',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/(io|cli)/' },
      to: {
        dependencyTypes: ['core'],
        path: '^(node:)?(fs|fs/promises|child_process|net|http|https|os|process|worker_threads)$',
      },
    },
    {
      name: 'cli-on-top',
      comment: 'Nothing imports the command line.',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/cli/' },
      to: { path: '^src/cli/' },
    },
    {
      name: 'no-circular',
      comment: 'Break the circle: move what both need into a third file.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'no-dep-on-test',
      comment: 'Product code never imports tests.',
      severity: 'error',
      from: { path: '^src/' },
      to: { path: '^tests/' },
    },
    {
      name: 'declared-packages-only',
      comment: 'Only packages in dependencies of package.json; development packages stay in tests.',
      severity: 'error',
      from: { path: '^src/' },
      to: { dependencyTypes: ['npm-dev', 'npm-no-pkg', 'npm-unknown'] },
    },
    ...placement,
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: 'specify',
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
    },
  },
};
