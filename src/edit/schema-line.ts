/** The first line of a facility file beside which its schema lies: editors complete and check by it. */
export const schemaLine = '# yaml-language-server: $schema=./facility.schema.json'
