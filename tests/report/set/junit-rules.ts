import type { Rule, Rules } from './xml-rules.js'

/**
 * What the schema of the Jenkins xUnit plug-in asks (junit-10.xsd, MIT licence), of the elements that we write. Typed from that file. It
 * lets a case hold its endings in any number; one at most is what readers share.
 */

const ending: Rule = { content: 'any', attributes: ['type', 'message'] }

export const JUNIT_RULES: Rules = {
  testsuites: {
    content: 'children',
    children: ['testsuite*'],
    attributes: ['name', 'time', 'tests', 'failures', 'errors'],
  },
  testsuite: {
    content: 'children',
    children: ['testsuite*', 'properties*', 'testcase*', 'system-out*', 'system-err*'],
    attributes: [
      'name!',
      'tests!',
      'failures!',
      'errors!',
      'group',
      'time',
      'skipped',
      'timestamp',
      'hostname',
      'id',
      'package',
    ],
    isMixed: true,
  },
  properties: { content: 'children', children: ['property*'] },
  property: { content: 'empty', attributes: ['name!', 'value'] },
  testcase: {
    content: 'children',
    children: ['skipped', 'error', 'failure', 'system-out', 'system-err'],
    attributes: ['name!', 'time', 'classname', 'group'],
    isMixed: true,
  },
  skipped: ending,
  error: ending,
  failure: ending,
}
