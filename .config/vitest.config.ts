import { configDefaults, defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    // Commands of their own: the accuracy page is made anew and compared, and what another client waits is measured, by
    // npx vitest run tests/accuracy and npx vitest run tests/bench
    exclude: [...configDefaults.exclude, 'tests/accuracy/**', 'tests/bench/**'],
    testTimeout: 120_000,
    hookTimeout: 120_000,
    pool: 'forks',
    coverage: { provider: 'v8', include: ['src/**/*.ts'], exclude: ['src/main.ts', 'src/demo.ts', 'src/generate.ts'] },
  },
})
