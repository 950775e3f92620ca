import { readdirSync } from 'node:fs'
import { basename, join, relative, resolve } from 'node:path'
import { INSTRUMENTER_CONSTANTS } from '@stryker-mutator/api/core'
import { commonTokens, declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin'
import { determineHitLimitReached, DryRunStatus, TestStatus, toMutantRunResult } from '@stryker-mutator/api/test-runner'
import * as vitest from '@vitest/runner'
import { expect } from './expectation.mjs'
import { Modules } from './modules.mjs'

/** Runs the tests for Stryker in its own process, with vitest's own runner and matchers: a mutant takes a fraction of a second. */

const CONFIG = {
  setupFiles: [],
  passWithNoTests: true,
  allowOnly: false,
  sequence: { concurrent: false, shuffle: false, hooks: 'stack', setupFiles: 'list' },
  maxConcurrency: 1,
  testTimeout: 60_000,
  hookTimeout: 60_000,
  retry: 0,
  includeTaskLocation: false,
  diffOptions: undefined,
  tags: [],
  strictTags: false,
}

const NAME = 'in-process'

class InProcessRunner {
  static inject = [commonTokens.options]

  #folders
  #stryker = (globalThis[INSTRUMENTER_CONSTANTS.NAMESPACE] ??= {})
  #files
  #modules = new Modules({ vitest: { ...vitest, expect } })

  constructor(options) {
    this.#folders = options.inProcess.tests
  }

  capabilities() {
    return { reloadEnvironment: true }
  }

  async init() {
    this.#files = this.#folders.flatMap(testsIn)
    for (const file of this.#files) await this.#modules.add(file)
  }

  async dryRun() {
    Object.assign(this.#stryker, { activeMutant: undefined, mutantCoverage: undefined })
    const tests = []
    for (const file of this.#files) {
      this.#modules.forgetMutated()
      tests.push(await this.#run(file, false))
    }
    return { status: DryRunStatus.Complete, tests, mutantCoverage: this.#stryker.mutantCoverage }
  }

  async mutantRun({ activeMutant, testFilter, hitLimit, disableBail }) {
    Object.assign(this.#stryker, { activeMutant: activeMutant.id, hitCount: 0, hitLimit })
    this.#modules.forgetMutated()
    const tests = []
    for (const file of likeliestFirst(this.#files, activeMutant.fileName)) {
      if (testFilter && !testFilter.includes(idOf(file))) continue
      tests.push(await this.#run(file, !disableBail))
      if (!disableBail && tests.some(isFailed)) break
    }
    const tooLong = determineHitLimitReached(this.#stryker.hitCount, hitLimit)
    return toMutantRunResult(tooLong ?? { status: DryRunStatus.Complete, tests })
  }

  /** One file is one test to Stryker: what a module keeps from one test of a file may be all that the next one sees of a mutant. */
  async #run(file, bail) {
    const id = idOf(file)
    const began = performance.now()
    let failure
    this.#stryker.currentTestId = id
    const [task] = await vitest.startTests([file], {
      config: { ...CONFIG, root: process.cwd() },
      importFile: (path) => this.#modules.load(path),
      onBeforeRunTask(test) {
        if (bail && failure) test.mode = 'skip'
      },
      onAfterRunTask(test) {
        if (test.result?.state === 'fail') failure ??= `${test.name}: ${test.result.errors?.[0]?.message}`
      },
    })
    this.#stryker.currentTestId = undefined
    failure ??= task.result?.errors?.[0]?.message
    const status = failure === undefined ? TestStatus.Success : TestStatus.Failed
    return { id, name: id, fileName: file, timeSpentMs: performance.now() - began, status, failureMessage: failure }
  }
}

const testsIn = (folder) =>
  readdirSync(resolve(folder), { recursive: true })
    .filter((name) => name.endsWith('.test.ts'))
    .sort()
    .map((name) => join(resolve(folder), name))

/** The tests that are named for the changed file come first: they are the likeliest to notice. */
function likeliestFirst(files, mutated) {
  const named = (file) => basename(file).startsWith(basename(mutated, '.ts'))
  return [...files.filter(named), ...files.filter((file) => !named(file))]
}

const isFailed = ({ status }) => status === TestStatus.Failed

const idOf = (file) => relative('', file)

export const strykerValidationSchema = {
  properties: { inProcess: { type: 'object', properties: { tests: { type: 'array', items: { type: 'string' } } } } },
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, NAME, InProcessRunner)]
