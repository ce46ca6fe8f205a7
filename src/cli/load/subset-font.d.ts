declare module 'subset-font' {
  /**
   * Cuts a font to some characters (HarfBuzz). The package has no types of its own.
   * @param font Bytes of a font in any format.
   * @param text Every character that is to stay.
   */
  function subsetFont(
    font: Buffer,
    text: string,
    options: {
      readonly targetFormat: 'woff2'
      readonly noHinting?: boolean
      /** Tags of tables that are left out. */
      readonly dropTables?: readonly string[]
    },
  ): Promise<Uint8Array>
  export = subsetFont
}
