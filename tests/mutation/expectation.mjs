import {
  ASYMMETRIC_MATCHERS_OBJECT,
  chai,
  ChaiStyleAssertions,
  customMatchers,
  GLOBAL_EXPECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from '@vitest/expect'

/** The `expect` of vitest outside its workers: the same matchers, put together in the same order. */

for (const plugin of [JestExtend, JestChaiExpect, ChaiStyleAssertions, JestAsymmetricMatchers]) chai.use(plugin)

export const expect = (value, message) => chai.expect(value, message)

Object.assign(expect, chai.expect, globalThis[ASYMMETRIC_MATCHERS_OBJECT])
setState({ assertionCalls: 0, isExpectingAssertions: false, expectedAssertionsNumber: null }, expect)
Object.defineProperty(globalThis, GLOBAL_EXPECT, { value: expect, configurable: true })
expect.extend = (matchers) => chai.expect.extend(expect, matchers)
expect.extend(customMatchers)
