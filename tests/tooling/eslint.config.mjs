import js from '@eslint/js';
import vitest from '@vitest/eslint-plugin';
import tseslint from 'typescript-eslint';

const bans = [
  {
    selector: "MemberExpression[object.name='Date'][property.name='now']",
    message: 'The clock is passed in (Workspace.now), so that the same input gives the same bytes.',
  },
  {
    selector: "NewExpression[callee.name='Date'][arguments.length=0]",
    message: 'The clock is passed in (Workspace.now), so that the same input gives the same bytes.',
  },
  {
    selector: "MemberExpression[object.name='Math'][property.name='random']",
    message: 'Nothing is left to chance: the same input gives the same bytes.',
  },
  {
    selector: 'MemberExpression[property.name=/^toLocale/]',
    message: "Only the locale's formatter writes for readers; toLocale… depends on the machine.",
  },
  {
    selector: "CallExpression[callee.property.name='sort'][arguments.length=0]",
    message: 'Give sort a comparator: the default order is that of text.',
  },
  {
    selector: "MemberExpression[object.name='process'][property.name='env']",
    message: 'The environment is read in src/cli only.',
  },
  { selector: "CallExpression[callee.object.name='console']", message: 'Only src/cli prints.' },
];

export default tseslint.config(
  { ignores: ['node_modules/**', 'out/**', 'coverage/**'] },
  js.configs.recommended,
  ...tseslint.configs.strictTypeChecked,
  {
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: new URL('../..', import.meta.url).pathname },
    },
    rules: {
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      'max-lines': ['error', { max: 250, skipBlankLines: false, skipComments: false }],
      'max-lines-per-function': ['error', { max: 60, skipBlankLines: true, skipComments: true }],
      complexity: ['error', 10],
      'max-params': ['error', 3],
      'max-depth': ['error', 3],
      'no-restricted-syntax': ['error', ...bans],
      eqeqeq: 'error',
    },
  },
  { files: ['src/io/**', 'src/cli/**'], rules: { 'no-restricted-syntax': 'off' } },
  {
    files: ['tests/**'],
    plugins: { vitest },
    rules: {
      ...vitest.configs.recommended.rules,
      'vitest/expect-expect': ['error', { assertFunctionNames: ['expect*', 'fc.assert'] }],
      'vitest/max-nested-describe': ['error', { max: 3 }],
      'max-lines': 'off',
      'max-lines-per-function': 'off',
      'no-restricted-syntax': 'off',
    },
  },
  {
    files: ['**/*.mjs', '**/*.js'],
    extends: [tseslint.configs.disableTypeChecked],
    languageOptions: { globals: { console: 'readonly', process: 'readonly', URL: 'readonly' } },
    rules: { 'no-restricted-syntax': 'off' },
  },
);
