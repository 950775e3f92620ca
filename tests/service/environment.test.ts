import { describe, expect, it } from 'vitest'
import { readEnvironment } from '../../src/service/environment.js'

const refusals = (variables: Record<string, string>): string[] => {
  const read = readEnvironment(variables)
  return 'refused' in read ? read.refused : []
}

describe('the environment', () => {
  it('needs nothing: loopback, port 8080', () => {
    expect(readEnvironment({})).toEqual({ host: '127.0.0.1', port: 8080, logLevel: 'info', remarks: [] })
    expect(readEnvironment({ PORT: '', HOST: '', AUTH: '' })).toEqual(readEnvironment({}))
  })

  it.each(['127.0.0.1', '::1', 'localhost'])('lets everyone on this machine call when it listens on %s', (HOST) => {
    expect(refusals({ HOST })).toEqual([])
    expect(refusals({ HOST, AUTH: 'off' })).toEqual([])
  })

  it.each(['0.0.0.0', '::', '192.0.2.1', 'example.org'])(
    'does not start on %s unless AUTH=off says that it may',
    (HOST) => {
      expect(refusals({ HOST })[0]).toContain('AUTH=off')
      expect(refusals({ HOST, AUTH: 'keys' })[0]).toContain('keys')
      expect(refusals({ HOST, AUTH: 'off' })).toEqual([])
    },
  )

  it('cannot serve with keys, nor be a worker, as long as neither exists', () => {
    expect(refusals({ AUTH: 'keys' })).toHaveLength(1)
    expect(refusals({ ROLE: 'worker' })).toHaveLength(1)
    expect(refusals({ ROLE: 'api' })).toEqual([])
  })

  it.each([
    { PORT: 'http' },
    { PORT: '65536' },
    { PORT: '-1' },
    { AUTH: 'no' },
    { ROLE: 'chief' },
    { LOG_LEVEL: 'loud' },
  ] as Record<string, string>[])('names what is wrong in %j', (variables) => {
    expect(refusals(variables)[0]).toContain(Object.keys(variables)[0])
  })

  it('says what has no effect yet', () => {
    const read = readEnvironment({ DATABASE_URL: 'postgres://user:secret@db/x', DATA_DIR: './data' })
    expect(read).toMatchObject({
      remarks: [expect.stringContaining('DATABASE_URL'), expect.stringContaining('DATA_DIR')],
    })
    expect(JSON.stringify(read)).not.toContain('secret')
  })
})
