import tseslint from 'typescript-eslint';

/** sim/ answers the same on every machine and at every hour: no chance, no clock, no console. */
const pureModel = {
  'no-console': 'error',
  'no-restricted-globals': ['error', 'Date', 'performance', 'setTimeout', 'setInterval', 'fetch'],
  'no-restricted-properties': [
    'error',
    { object: 'Math', property: 'random', message: 'use base/noise.ts with the seed of the job' },
  ],
};

export default tseslint.config(
  { ignores: ['dist/**', 'node_modules/**', 'test-results/**', 'playwright-report/**'] },
  ...tseslint.configs.recommendedTypeChecked,
  {
    languageOptions: {
      parserOptions: {
        project: [
          './sim/tsconfig.json',
          './src/tsconfig.json',
          './src/cli/tsconfig.json',
          './tests/tsconfig.json',
        ],
        tsconfigRootDir: import.meta.dirname,
      },
    },
    rules: {
      eqeqeq: 'error',
      'no-var': 'error',
      'prefer-const': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-non-null-assertion': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
      '@typescript-eslint/no-unnecessary-condition': 'off',
    },
  },
  { files: ['sim/**/*.ts'], rules: pureModel },
  // A test that reads past its data fails at once, which is what it is for.
  { files: ['tests/**/*.ts'], rules: { '@typescript-eslint/no-non-null-assertion': 'off' } },
  { files: ['**/*.js', '**/*.mjs', '**/*.cjs'], ...tseslint.configs.disableTypeChecked },
);
