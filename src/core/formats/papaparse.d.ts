/** The part of papaparse 5.7 used here; its published types bring those of Node with them. */
declare module "papaparse" {
  export interface CsvParsed {
    /** One list of cells for each record. */
    readonly data: readonly (readonly string[])[];
    readonly errors: readonly {
      readonly code: string;
      /** Place of the record in `data`; absent for faults of the whole text. */
      readonly row?: number;
    }[];
  }

  const Papa: {
    parse(
      text: string,
      settings: { readonly delimiter: string; readonly preview?: number },
    ): CsvParsed;
    unparse(
      records: readonly (readonly string[])[],
      settings: { readonly newline: string },
    ): string;
  };
  export default Papa;
}
