import { configDefaults, defineConfig } from 'vitest/config'

/** Which lines of the core its own tests run: `npm run coverage`. The service, its pages and its store are run as processes and in threads. */

const CORE = [
  'braille',
  'command',
  'drawing',
  'end-to-end',
  'geometry',
  'judge',
  'make',
  'measure',
  'recognise',
  'report',
  'sign',
  'standards',
  'statistics',
  'windows',
]

export default defineConfig({
  test: {
    include: CORE.map((folder) => `tests/${folder}/**/*.test.ts`),
    // Browsers and painters run nothing of ours; clients ask a service.
    exclude: [
      ...configDefaults.exclude,
      'tests/**/accessibility.test.ts',
      'tests/make/draw/picture.test.ts',
      'tests/end-to-end/client*.test.ts',
    ],
    testTimeout: 300_000,
    hookTimeout: 300_000,
    pool: 'forks',
    // Modules are read once for all files: counting their lines makes that the longest part.
    isolate: false,
    coverage: {
      provider: 'v8',
      reportsDirectory: 'coverage',
      reporter: ['text', 'json-summary'],
      include: ['src/**/*.ts'],
      exclude: [
        'src/service/**',
        'src/page/**',
        'src/submittals/**',
        'src/client/**',
        'src/*-command.ts',
        'src/main.ts',
      ].concat('src/demo.ts', 'src/generate.ts', 'src/fingertrue.ts'),
      thresholds: { lines: 95 },
    },
  },
})
