import type { Rule, Rules } from './xml-rules.js'

/**
 * What the schemas of BCF-XML ask, release 3.0 of buildingSMART (Schemas/version.xsd, project.xsd, extensions.xsd, markup.xsd and
 * shared-types.xsd), of the elements that we write: which may stand where, in which order, and what they hold. Typed from those files;
 * their licence (CC BY-ND 4.0) lets them be passed on only as they are, so that they are not built upon here.
 */

const list = (...children: string[]): Rule => ({ content: 'children', children })
const TEXT: Rule = { content: 'text' }
const DATE: Rule = { content: 'date' }
const EMPTY: Rule = { content: 'empty' }

/** By name; two elements are named alike and differ by what they stand in. */
export const BCF_RULES: Rules = {
  Version: { content: 'empty', attributes: ['VersionId!'] },
  ProjectInfo: list('Project!'),
  Project: { content: 'children', children: ['Name'], attributes: ['ProjectId!'] },
  Name: TEXT,
  Extensions: list(...['TopicTypes', 'TopicStatuses', 'Priorities', 'TopicLabels', 'Users', 'SnippetTypes', 'Stages']),
  TopicTypes: list('TopicType*'),
  TopicType: TEXT,
  TopicStatuses: list('TopicStatus*'),
  TopicStatus: TEXT,
  Priorities: list('Priority*'),
  TopicLabels: list('TopicLabel*'),
  TopicLabel: TEXT,
  Users: list('User*'),
  User: TEXT,
  SnippetTypes: list('SnippetType*'),
  Stages: list('Stage*'),
  Markup: list('Header', 'Topic!'),
  Topic: {
    content: 'children',
    children: [
      ...[
        'ReferenceLinks',
        'Title!',
        'Priority',
        'Index',
        'Labels',
        'CreationDate!',
        'CreationAuthor!',
        'ModifiedDate',
      ],
      ...['ModifiedAuthor', 'DueDate', 'AssignedTo', 'Stage', 'Description', 'BimSnippet', 'DocumentReferences'],
      ...['RelatedTopics', 'Comments', 'Viewpoints'],
    ],
    attributes: ['Guid!', 'ServerAssignedId', 'TopicType!', 'TopicStatus!'],
  },
  ReferenceLinks: list('ReferenceLink*'),
  ReferenceLink: TEXT,
  Title: TEXT,
  Labels: list('Label*'),
  Label: TEXT,
  CreationDate: DATE,
  CreationAuthor: TEXT,
  Description: TEXT,
  DocumentReferences: EMPTY,
  RelatedTopics: EMPTY,
  Comments: list('Comment*'),
  'Comments/Comment': {
    content: 'children',
    children: ['Date!', 'Author!', 'Comment', 'Viewpoint', 'ModifiedDate', 'ModifiedAuthor'],
    attributes: ['Guid!'],
  },
  Date: DATE,
  Author: TEXT,
  'Comment/Comment': TEXT,
  Viewpoints: list('ViewPoint*'),
  ViewPoint: { content: 'children', children: ['Viewpoint', 'Snapshot', 'Index'], attributes: ['Guid!'] },
  Snapshot: TEXT,
}
