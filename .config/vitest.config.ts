import { configDefaults, defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    // The accuracy page is made anew and compared by a command of its own: npx vitest run tests/accuracy
    exclude: [...configDefaults.exclude, 'tests/accuracy/**'],
    testTimeout: 120_000,
    hookTimeout: 120_000,
    pool: 'forks',
    coverage: { provider: 'v8', include: ['src/**/*.ts'], exclude: ['src/main.ts', 'src/demo.ts', 'src/generate.ts'] },
  },
})
