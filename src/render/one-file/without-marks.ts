/** Names by which a script finds what follows the numbers of a day. */
const names = / data-(?:q|reckoner|output|use)="[^"]*"| data-input="[^"]*"(?: data-fact="[^"]*")?/g

/** Formulas without their numbers, from which a script sets those of a day. */
const formulas =
  /<template>(?:<math[ >](?:(?!<\/template>).)*)<\/template>|<template data-symbol="[^"]*">.*?<\/template>/gs

/**
 * A page without the marks of what follows the numbers of a day: as it would be made if nothing
 * followed them.
 * @param text What the project itself has made: attributes stand in double quotes, which are not
 *   written so in text.
 */
export const withoutMarks = (text: string): string => text.replace(names, '').replace(formulas, '')
