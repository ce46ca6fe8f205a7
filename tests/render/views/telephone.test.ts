import { describe, expect, it } from 'vitest'
import { telephone } from '../../../src/render/views/telephone.ts'

describe('a touch on a telephone number', () => {
  // Written as people write them; tel: addresses and their ext= as in RFC 3966.
  it.each([
    ['911', 'tel:911'],
    ['555-0110', 'tel:5550110'],
    ['(555) 014-3322', 'tel:5550143322'],
    ['+1 555 014 3322', 'tel:+15550143322'],
    ['*77', 'tel:*77'],
    ['(555) 014-3322 cell, or 555 0143', 'tel:5550143322'],
    ['555-0101 / 555-0102', 'tel:5550101'],
    ['555-0101, 555-0102', 'tel:5550101'],
    ['555-0101 or 555-0102', 'tel:5550101'],
    ['nights: 555-0115', 'tel:5550115'],
    ['555 0143 ext 12', 'tel:5550143;ext=12'],
    ['555-0143 ext. 12', 'tel:5550143;ext=12'],
    ['555-0143x12', 'tel:5550143;ext=12'],
    ['555-0143 extension 4', 'tel:5550143;ext=4'],
    ['1-800-CALL-811', ''],
    ['', ''],
  ])('%s rings %s', (phone, href) => expect(telephone(phone)).toBe(href))
})
