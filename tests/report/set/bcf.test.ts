import { describe, expect, it } from 'vitest'
import { setBcf, signsWithTopics, type BcfOptions } from '../../../src/report/set/bcf.js'
import type { SetEvidence } from '../../../src/report/set/evidence.js'
import { nameUuid } from '../../../src/report/set/uuid.js'
import { BCF_RULES } from './bcf-rules.js'
import { REQUIREMENTS, sampleSet, setSign, wordedSet } from './evidence-sample.js'
import { naughty } from './naughty.js'
import { unzipped } from './unzipped.js'
import { xmlFaults } from './xml-rules.js'
import { childOf, childrenOf, xmlTree, type Tree } from './xml-tree.js'

/** No picture, only bytes to find again. */
const PICTURE = Buffer.from('89504e470d0a1a0a', 'hex')

async function filesOf(evidence: SetEvidence, options?: BcfOptions): Promise<Map<string, Buffer>> {
  const files = await unzipped(setBcf(evidence, options))
  for (const [name, bytes] of files)
    if (/\.(bcf|bcfp|version|xml)$/.test(name))
      expect(xmlFaults(BCF_RULES, xmlTree(bytes.toString())), name).toEqual([])
  return files
}

const topicsOf = (files: Map<string, Buffer>): Tree[] =>
  [...files]
    .filter(([name]) => name.endsWith('/markup.bcf'))
    .map(([, bytes]) => childOf(xmlTree(bytes.toString()), 'Topic'))
    .filter((topic) => topic !== undefined)

const textOf = (topic: Tree | undefined, name: string) => childOf(topic, name)?.text

const topicOf = (topics: Tree[], requirement: string): Tree | undefined => {
  const title = `${setSign('L-17').report?.findings.find((f) => f.requirement === requirement)?.message}`
  return topics.find((topic) => textOf(topic, 'Title') === `L-17: ${title}`)
}

describe('version 5 UUIDs', () => {
  it('are those of RFC 9562, appendix A.4', () => {
    expect(nameUuid('6ba7b810-9dad-11d1-80b4-00c04fd430c8', 'www.example.com')).toBe(
      '2ed6657d-e927-568b-95e1-2665a8aea6a2',
    )
  })
})

describe('a set as BCF-XML 3.0', () => {
  it('keeps the typed rules of the schemas, which refuse what they should', async () => {
    const files = await filesOf(sampleSet(), {
      pictures: new Map([['sgn_L-17', PICTURE]]),
      base: 'https://signs.example',
    })
    const markup = [...files].find(([name]) => name.endsWith('/markup.bcf'))?.[1].toString() ?? ''
    const broken: [RegExp, string][] = [
      [/<Title>.*<\/Title>/, ''],
      [/<Title>.*<\/Title>/, '<Title> </Title>'],
      [/<CreationDate>.*<\/CreationDate>/, '<CreationDate>yesterday</CreationDate>'],
      [/Topic Guid="./, 'Topic Guid="G'],
      [/ TopicStatus="[^"]*"/, ''],
      [/<Labels>/, '<Labels><Title>x</Title>'],
      [/(<Title>.*<\/Title>)([^]*)(<CreationDate>.*<\/CreationDate>)/, '$3$2$1'],
    ]
    for (const [what, other] of broken) {
      expect(markup).toMatch(what)
      expect(xmlFaults(BCF_RULES, xmlTree(markup.replace(what, other))), String(what)).not.toEqual([])
    }
  })

  it('has the files of the documentation (3.0, BCF file structure), folders as entries, forward slashes', async () => {
    const files = await filesOf(sampleSet())
    const names = [...files.keys()]
    expect(names.slice(0, 3)).toEqual(['bcf.version', 'extensions.xml', 'project.bcfp'])
    expect(xmlTree(files.get('bcf.version')?.toString() ?? '').attributes).toEqual({ VersionId: '3.0' })
    for (const topic of topicsOf(files)) {
      expect(names).toContain(`${topic.attributes.Guid}/`)
      expect(names).toContain(`${topic.attributes.Guid}/markup.bcf`)
    }
  })

  it('has one topic for each required row that a sign fails, and none for anything else', async () => {
    const evidence = sampleSet()
    const failing = evidence.signs.flatMap(({ mark, report }) =>
      (report?.findings ?? [])
        .filter((f) => f.verdict === 'fail' && f.force === 'shall')
        .map((f) => `${mark}: ${f.message}`),
    )
    const topics = topicsOf(await filesOf(evidence))
    expect(failing).toHaveLength(6)
    expect(topics.map((topic) => textOf(topic, 'Title')).sort()).toEqual(failing.sort())
  })

  it('closes a topic that was waived, with who, when and why; one whose waiver is over stays open', async () => {
    const topics = topicsOf(await filesOf(sampleSet()))
    const waived = topicOf(topics, REQUIREMENTS.waived)
    expect(waived?.attributes).toMatchObject({ TopicType: 'Error', TopicStatus: 'Closed' })
    const comment = childOf(childOf(waived, 'Comments'), 'Comment')
    expect(textOf(comment, 'Author')).toBe('R. Ortega')
    expect(textOf(comment, 'Date')).toBe('2026-03-02T09:30:00.000Z')
    expect(textOf(comment, 'Comment')).toMatch(/^Waived\. The wall is listed.*Letter 44/)
    const lapsed = topicOf(topics, REQUIREMENTS.lapsed)
    expect(lapsed?.attributes.TopicStatus).toBe('Open')
    expect(textOf(childOf(childOf(lapsed, 'Comments'), 'Comment'), 'Comment')).toMatch(/^Waiver expired\./)
    const failing = topicOf(topics, REQUIREMENTS.failing)
    expect(failing?.attributes.TopicStatus).toBe('Open')
    expect(childrenOf(childOf(failing, 'Comments'), 'Comment')).toEqual([])
  })

  it('says what was measured, allowed and lacking, by which clause, and that it is no certification', async () => {
    const topic = topicOf(topicsOf(await filesOf(sampleSet())), REQUIREMENTS.lapsed)
    const finding = setSign('L-17').report?.findings.find((f) => f.requirement === REQUIREMENTS.lapsed)
    const description = textOf(topic, 'Description') ?? ''
    for (const part of [finding?.message, finding?.limit.printed, `${finding?.margin} mm`, finding?.remedy?.text])
      expect(description).toContain(part)
    expect(description).toContain('Loft 17')
    expect(description).toContain('not a certification')
    const labels = childrenOf(childOf(topic, 'Labels'), 'Label').map(({ text }) => text)
    expect(labels).toEqual(['us-ada-2010', 'us-ada-2010 703.3.1'])
    expect(textOf(topic, 'CreationDate')).toBe('2026-03-03T16:45:10.250Z')
  })

  it('lists in its extensions every word that a topic takes out of a list', async () => {
    const files = await filesOf(sampleSet())
    const extensions = xmlTree(files.get('extensions.xml')?.toString() ?? '')
    const listed = (outer: string) => childOf(extensions, outer)?.children.map(({ text }) => text) ?? []
    for (const topic of topicsOf(files)) {
      expect(listed('TopicTypes')).toContain(topic.attributes.TopicType)
      expect(listed('TopicStatuses')).toContain(topic.attributes.TopicStatus)
      expect(listed('Users')).toContain(textOf(topic, 'CreationAuthor'))
      for (const { text } of childrenOf(childOf(topic, 'Labels'), 'Label'))
        expect(listed('TopicLabels')).toContain(text)
      for (const comment of childrenOf(childOf(topic, 'Comments'), 'Comment'))
        expect(listed('Users')).toContain(textOf(comment, 'Author'))
    }
  })

  it('keeps the GUID of a topic while the finding is the same, so that reading it again brings it up to date', async () => {
    const before = sampleSet()
    const after = {
      ...before,
      asOf: '2027-01-01T00:00:00.000Z',
      signs: before.signs.map((sign) => ({ ...sign, waivers: [] })),
    }
    const guids = async (set: SetEvidence) => topicsOf(await filesOf(set)).map(({ attributes }) => attributes.Guid)
    expect(await guids(after)).toEqual(await guids(before))
    expect(new Set(await guids(before)).size).toBe(6)
  })

  it('tells the topics of two signs with one mark apart', async () => {
    const twins = [setSign('L-17'), setSign('L-17', { id: 'sgn_other' })]
    const topics = topicsOf(await filesOf({ ...sampleSet(), signs: twins }))
    expect(new Set(topics.map(({ attributes }) => attributes.Guid)).size).toBe(6)
  })

  it('puts the picture of the sign beside each of its topics, and a new viewpoint for a new picture', async () => {
    const files = await filesOf(sampleSet(), { pictures: new Map([['sgn_L-17', PICTURE]]) })
    const shown = topicsOf(files).filter((topic) => childOf(topic, 'Viewpoints'))
    expect(shown).toHaveLength(3)
    for (const topic of shown) {
      const viewpoint = childOf(childOf(topic, 'Viewpoints'), 'ViewPoint')
      expect(files.get(`${topic.attributes.Guid}/${textOf(viewpoint, 'Snapshot')}`)).toEqual(PICTURE)
    }
    const other = await filesOf(sampleSet(), { pictures: new Map([['sgn_L-17', Buffer.from('other')]]) })
    const viewpoints = (all: Map<string, Buffer>) => [...all.keys()].filter((name) => name.endsWith('.png'))
    expect(viewpoints(other)).not.toEqual(viewpoints(files))
  })

  it('stops putting pictures in when they fill 64 MiB, and keeps every topic', async () => {
    const large = Buffer.alloc(25 * 1024 * 1024)
    const files = await filesOf(sampleSet(), {
      pictures: new Map(['L-17', 'L-18'].map((mark) => [`sgn_${mark}`, large])),
    })
    expect([...files.keys()].filter((name) => name.endsWith('.png'))).toHaveLength(2)
    expect(topicsOf(files)).toHaveLength(6)
  })

  it('has a use for pictures of the signs with topics alone', () => {
    expect(signsWithTopics(sampleSet()).map(({ mark }) => mark)).toEqual(['L-17', 'L-18'])
  })

  it('is the same bytes for the same set, wherever it is written', () => {
    const zone = process.env.TZ
    const first = setBcf(sampleSet())
    try {
      process.env.TZ = 'Pacific/Kiritimati'
      expect(Buffer.compare(setBcf(sampleSet()), first)).toBe(0)
    } finally {
      if (zone === undefined) delete process.env.TZ
      else process.env.TZ = zone
    }
  })

  it('is a file without topics where nothing fails', async () => {
    const files = await filesOf({ ...sampleSet(), signs: [] })
    expect([...files.keys()]).toEqual(['bcf.version', 'extensions.xml', 'project.bcfp'])
  })

  it('holds naughty strings as text alone', async () => {
    const entries = async (words: string) => {
      const set = wordedSet(words)
      return (await filesOf({ ...set, signs: set.signs.slice(0, 1) })).size
    }
    const harmless = await entries('L-17')
    for (const words of naughty()) expect(await entries(words), JSON.stringify(words)).toBe(harmless)
  })
})
