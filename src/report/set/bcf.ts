import { createHash } from 'node:crypto'
import { zipSync, type Zippable } from 'fflate'
import type { Finding } from '../finding-schema.js'
import { Html, markup, NOTHING } from '../html-tag.js'
import { escaped, plain } from '../markup.js'
import { outdatedWords, STANDING_WORDS, waiversFor, waiverWords } from '../overlay.js'
import { NO_CERTIFICATION } from '../caveats.js'
import { standardOfRequirement } from '../../standards/requirement-id.js'
import type { SetEvidence, SetSign, SetWaiver } from './evidence.js'
import { findingLines } from './finding-lines.js'
import { outcomeOf } from './outcome.js'
import { nameUuid } from './uuid.js'
import { zipDate } from './zip-date.js'

/**
 * The set for building models: BCF-XML 3.0 (buildingSMART, release 3.0: its documentation, its schemas and its test cases). One topic for
 * each required row that a sign fails. Elements stand in the order of the schemas.
 */

export interface BcfOptions {
  /** PNG pictures of signs, by the id of the sign. */
  pictures?: ReadonlyMap<string, Uint8Array>
  /** Who writes the topics; like an e-mail address, since some readers want one. */
  author?: string
  /** Where this service is found, without a slash at the end; topics then link to the submittal. */
  base?: string
}

/** RFC 2606 keeps `.invalid` from ever being an address. */
const AUTHOR = 'checks@fingertrue.invalid'
/** Our namespace: the name-based UUID of `fingertrue.invalid` in the namespace of domain names (RFC 9562, 6.6). */
const NAMESPACE = nameUuid('6ba7b810-9dad-11d1-80b4-00c04fd430c8', 'fingertrue.invalid')

/**
 * Bytes of pictures in one file. Each topic has its own copy, as the format wants it; what comes when the room is used up has none, so that
 * the file of a large set can still be read.
 */
const MOST_PICTURES = 64 * 1024 * 1024

const TYPE = 'Error'
/** The status of a topic by what its finding comes to; what has none here is no topic. */
const STATUSES = { fail: 'Open', 'fail-waived': 'Closed' } as const
type Status = (typeof STATUSES)[keyof typeof STATUSES]

interface Topic {
  guid: string
  status: Status
  sign: SetSign
  finding: Finding
  labels: string[]
  waivers: SetWaiver[]
}

interface Book {
  evidence: SetEvidence
  options: BcfOptions
  author: string
}

/** @returns a .bcf file, which is a zip; the same evidence and pictures give the same bytes */
export function setBcf(evidence: SetEvidence, options: BcfOptions = {}): Uint8Array {
  const book = { evidence, options, author: filled(options.author ?? '', AUTHOR) }
  const topics = evidence.signs.flatMap((sign) => topicsOf(evidence, sign))
  const files: Zippable = {
    'bcf.version': xml(markup`<Version VersionId="3.0"/>`),
    'extensions.xml': xml(extensions(topics, book.author)),
    'project.bcfp': xml(project(evidence)),
  }
  let room = MOST_PICTURES
  for (const topic of topics) {
    const picture = options.pictures?.get(topic.sign.id)
    room -= picture?.length ?? 0
    files[topic.guid] = topicFolder(topic, book, room >= 0 ? picture : undefined)
  }
  return zipSync(files, { mtime: zipDate(evidence.asOf) })
}

/** The signs that have a topic, and so a use for a picture. */
export const signsWithTopics = (evidence: SetEvidence): SetSign[] =>
  evidence.signs.filter((sign) => topicsOf(evidence, sign).length > 0)

const xml = (root: Html): Uint8Array =>
  Buffer.from(`<?xml version="1.0" encoding="UTF-8"?>\n${root.text.replace(/>\s*\n\s*</g, '>\n<')}\n`)

/** The text, or another where nothing of it would be seen: no text of a topic may be blank. */
const filled = (text: string, other: string): string => (plain(text).trim() === '' ? other : text)

function topicsOf({ id }: SetEvidence, sign: SetSign): Topic[] {
  return (sign.report?.findings ?? []).flatMap((finding) => {
    const outcome = outcomeOf(sign, finding)
    if (finding.force !== 'shall' || (outcome !== 'fail' && outcome !== 'fail-waived')) return []
    const standard = standardOfRequirement(finding.requirement)
    return {
      guid: nameUuid(NAMESPACE, `${id}/${sign.id}/${finding.fingerprint}`),
      status: STATUSES[outcome],
      sign,
      finding,
      labels: [standard, `${standard} ${finding.clause}`],
      waivers: waiversFor(sign, finding),
    }
  })
}

function topicFolder(topic: Topic, book: Book, picture: Uint8Array | undefined): Zippable {
  if (!picture) return { 'markup.bcf': xml(topicMarkup(topic, book, NOTHING)) }
  // Viewpoints never change (3.0, Viewpoints): another picture is another viewpoint.
  const guid = nameUuid(topic.guid, createHash('sha256').update(picture).digest('hex'))
  const name = `Snapshot_${guid}.png`
  const viewpoints = markup`<Viewpoints><ViewPoint Guid="${guid}"><Snapshot>${name}</Snapshot></ViewPoint></Viewpoints>`
  return { 'markup.bcf': xml(topicMarkup(topic, book, viewpoints)), [name]: [picture, { level: 0 }] }
}

function topicMarkup(topic: Topic, { evidence, options, author }: Book, viewpoints: Html): Html {
  const { guid, status, sign, finding, labels, waivers } = topic
  const mark = filled(sign.mark, sign.id)
  const places = [sign.location && `Place: ${sign.location}`, sign.door && `Door: ${sign.door}`].filter(
    (line) => !!line,
  )
  const outdated = outdatedWords(sign)
  const lines = [...(outdated === undefined ? [] : [outdated]), ...findingLines(finding), ...places, NO_CERTIFICATION]
  const links = options.base ? [`${options.base}/v1/submittals/${encodeURIComponent(evidence.id)}`] : []
  return markup`<Markup>
    <Topic Guid="${guid}" TopicType="${TYPE}" TopicStatus="${status}">
    <ReferenceLinks>${links.map((link) => markup`<ReferenceLink>${link}</ReferenceLink>`)}</ReferenceLinks>
    <Title>${`${mark}: ${finding.message}`}</Title>
    <Labels>${labels.map((label) => markup`<Label>${label}</Label>`)}</Labels>
    <CreationDate>${evidence.asOf}</CreationDate>
    <CreationAuthor>${author}</CreationAuthor>
    <Description>${new Html(lines.map((line) => escaped(String(line))).join('\n'))}</Description>
    <DocumentReferences/>
    <RelatedTopics/>
    <Comments>${waivers.map((waiver) => comment(waiver, guid, author))}</Comments>
    ${viewpoints}
    </Topic>
    </Markup>`
}

function comment(waiver: SetWaiver, topic: string, author: string): Html {
  const guid = nameUuid(topic, `waiver ${waiver.at} ${waiver.author} ${waiver.reason}`)
  return markup`<Comment Guid="${guid}"><Date>${waiver.at}</Date><Author>${filled(waiver.author, author)}</Author>
    <Comment>${`${STANDING_WORDS[waiver.standing]}. ${waiverWords(waiver)}`}</Comment></Comment>`
}

const sorted = (texts: string[]): string[] => [...new Set(texts)].sort()

/** Every word that a topic uses out of a list has to be in it. */
function extensions(topics: Topic[], author: string): Html {
  const users = topics.flatMap(({ waivers }) => waivers.map((waiver) => filled(waiver.author, author)))
  const list = (name: string, one: string, texts: string[]): Html => {
    const [outer, inner] = [new Html(name), new Html(one)]
    return markup`<${outer}>${sorted(texts).map((text) => markup`<${inner}>${text}</${inner}>`)}</${outer}>`
  }
  return markup`<Extensions>
    ${list('TopicTypes', 'TopicType', [TYPE])}
    ${list('TopicStatuses', 'TopicStatus', Object.values(STATUSES))}
    <Priorities/>
    ${list(
      'TopicLabels',
      'TopicLabel',
      topics.flatMap(({ labels }) => labels),
    )}
    ${list('Users', 'User', [author, ...users])}
    <SnippetTypes/>
    <Stages/>
    </Extensions>`
}

const project = ({ id, name }: SetEvidence): Html =>
  markup`<ProjectInfo><Project ProjectId="${nameUuid(NAMESPACE, id)}"><Name>${filled(name, id)}</Name></Project></ProjectInfo>`
