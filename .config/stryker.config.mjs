/** Which changes are made to the code, and which tests must notice them: docs/testing.md. */
export default {
  plugins: ['./tests/mutation/runner.mjs'],
  testRunner: 'in-process',
  inProcess: {
    tests: ['tests/measure', 'tests/judge', 'tests/standards'],
    but: ['tests/standards/interval-rows.test.ts', 'tests/standards/by-distance.test.ts'],
  },
  timeoutMS: 120_000,
  timeoutFactor: 10,
  coverageAnalysis: 'perTest',
  mutator: { excludedMutations: ['StringLiteral'] },
  concurrency: 2,
  reporters: ['progress-append-only', 'clear-text', 'json'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  incremental: true,
  incrementalFile: '.mutation/incremental.json',
  jsonReporter: { fileName: '.mutation/report.json' },
  tempDirName: '.mutation/sandbox',
  ignorePatterns: [
    '/*',
    '!/src',
    '!/tests',
    '!/package.json',
    '/tests/*',
    '!/tests/{judge,measure,standards,mutation}',
  ],
  allowEmpty: false,
}
