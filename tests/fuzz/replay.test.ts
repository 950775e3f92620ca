import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { afterAll, describe, expect, it } from 'vitest'

/**
 * The inputs of the fuzzing that are kept, each through its reader once more: those that reach what no other does (`corpus/`), and those
 * that a reader failed at before it was mended (`found/`). They were made by the fuzzer or by hand, all of them here.
 */

interface Target {
  /** Throws what is a finding. */
  fuzz: (bytes: Buffer) => unknown
  close?: () => Promise<unknown>
}

/** Milliseconds: a few seconds of a machine that is not shared. */
const PATIENCE = 300_000

const READERS = ['drawing', 'description', 'schedule', 'program', 'service']

const targets = new Map<string, Target>()

async function targetOf(reader: string): Promise<Target> {
  const target = targets.get(reader) ?? ((await import(new URL(`./${reader}.mjs`, import.meta.url).href)) as Target)
  targets.set(reader, target)
  return target
}

afterAll(async () => {
  for (const { close } of targets.values()) await close?.()
})

function inputs(folder: 'corpus' | 'found', reader: string): { name: string; bytes: Buffer }[] {
  const place = new URL(`./${folder}/${reader}/`, import.meta.url)
  // Nothing was ever found with some readers.
  if (folder === 'found' && !existsSync(place)) return []
  return readdirSync(place).map((name) => ({
    name: `${folder}/${reader}/${name}`,
    bytes: readFileSync(new URL(name, place)),
  }))
}

describe.each(READERS)('the reader of a %s', (reader) => {
  it(
    'answers all that is kept with a report or a refusal',
    async () => {
      const { fuzz } = await targetOf(reader)
      const kept = [...inputs('corpus', reader), ...inputs('found', reader)]
      const failed: string[] = []
      for (const { name, bytes } of kept)
        try {
          await fuzz(bytes)
        } catch (error) {
          failed.push(`${name}: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`)
        }
      expect(failed).toEqual([])
      expect(kept.length).toBeGreaterThan(0)
    },
    PATIENCE,
  )
})
