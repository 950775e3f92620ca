import { configDefaults, defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    // Commands of their own, npx vitest run tests/<folder>: the accuracy page is made anew and compared, what another client
    // waits is measured, and processes and databases are killed, and two processes are asked through a load balancer.
    exclude: [
      ...configDefaults.exclude,
      'tests/accuracy/**',
      'tests/bench/**',
      'tests/faults/**',
      'tests/deploying/balanced.test.ts',
    ],
    testTimeout: 120_000,
    hookTimeout: 120_000,
    pool: 'forks',
  },
})
