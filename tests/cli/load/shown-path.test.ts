import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { pathBelow, withSlashes } from '../../../src/cli/load/shown-path.ts'

describe('a path below a folder', () => {
  it('is written with slashes on every kind of computer', () => {
    expect(pathBelow('/fairs', '/fairs/larkmoor/own/facility.yaml', path.posix)).toBe(
      'larkmoor/own/facility.yaml',
    )
    expect(pathBelow('C:\\fairs', 'C:\\fairs\\larkmoor\\facility.yaml', path.win32)).toBe(
      'larkmoor/facility.yaml',
    )
  })

  it('is none for what lies beside the folder, above it or on another drive', () => {
    expect(pathBelow('/fairs/larkmoor', '/fairs/other/facility.yaml', path.posix)).toBeUndefined()
    expect(pathBelow('/fairs/larkmoor', '/fairs', path.posix)).toBeUndefined()
    expect(pathBelow('C:\\fairs', 'D:\\fairs\\larkmoor', path.win32)).toBeUndefined()
    expect(pathBelow('C:\\fairs', 'C:\\other\\larkmoor', path.win32)).toBeUndefined()
  })

  it('may begin with two dots that are part of a name', () => {
    expect(pathBelow('/fairs', '/fairs/..old/facility.yaml', path.posix)).toBe(
      '..old/facility.yaml',
    )
  })
})

describe('a path elsewhere', () => {
  it('is written with slashes, and a backslash in a name stays where it is no separator', () => {
    expect(withSlashes('D:\\fairs\\larkmoor', path.win32)).toBe('D:/fairs/larkmoor')
    expect(withSlashes('/fairs/a\\b', path.posix)).toBe('/fairs/a\\b')
  })
})
