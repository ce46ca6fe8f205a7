import type { Capability } from './capability.ts'
import type { Charts } from './charts.ts'
import type { Figure, Provenance, Worksheet } from './figure.ts'
import type { Material, Rail } from './oval-choices.ts'
import type { DividerKind, Paper, SheetPaper } from './papers.ts'
import type { UnitSystem } from './quantity/kinds.ts'

/** Markdown in which `{grade.time}` stands for a quantity of `Manual.quantities`. */
export type Text = string

/** A quantity that text can name: a figure, or a fact of the facility. */
export type NamedQuantity = {
  readonly name: string
  readonly label: string
  /**
   * As set large: "1 h 25" and "min". When there is no value, `text` says "not known" and `reason`
   * why.
   */
  readonly number: string
  readonly unit: string
  readonly text: string
  readonly ok: boolean
  readonly reason: string
  readonly estimate: boolean
  /** Labels of what to measure to make an estimate sharp. */
  readonly toMeasure: readonly string[]
  /** Number and id of the worksheet, for figures; undefined for facts. */
  readonly worksheet: { readonly number: string; readonly id: string } | undefined
}

export type ManualCaution = {
  readonly id: string
  readonly signal: 'danger' | 'warning' | 'caution' | 'notice'
  readonly hazard: Text
  readonly avoid: Text
  readonly sources: readonly string[]
}

export type ManualStep = {
  readonly number: number
  readonly do: Text
  readonly note: Text | undefined
  readonly cautions: readonly ManualCaution[]
  /** Names of quantities for the margin. */
  readonly figures: readonly string[]
}

export type ManualMethod = {
  readonly id: string
  readonly title: string
  readonly choose: Text | undefined
  /** Id in `renderDrawings`. */
  readonly drawing: string | undefined
  readonly steps: readonly ManualStep[]
}

export type ManualSheet = {
  readonly when: Text
  readonly cautions: readonly ManualCaution[]
  readonly figures: readonly { readonly name: string; readonly label: Text }[]
  readonly steps: readonly ManualStep[]
  /** Id in `renderDrawings`. */
  readonly drawing: string | undefined
  readonly done: readonly Text[]
  readonly stop: readonly Text[]
  readonly reckoner: ManualReckoner | undefined
  readonly worksheets: readonly string[]
}

/** A procedure with only what applies to this facility. */
export type ManualProcedure = {
  readonly id: string
  /** Section and place in it, such as `2.1`; pages are numbered `2-1`. */
  readonly number: string
  readonly title: string
  readonly section: string
  readonly purpose: Text
  readonly triggers: readonly Text[]
  readonly symptoms: readonly string[]
  readonly who: { readonly people: number; readonly roles: Text; readonly authority: Text }
  /** Each entry is "figure, words" ready to be read after "Time". */
  readonly time: readonly { readonly figure: string | undefined; readonly text: Text | undefined }[]
  /** Machines for each capability that the work asks for, or what to do instead. */
  readonly gear: readonly {
    readonly can: Capability
    readonly why: Text
    readonly machine: string | undefined
    readonly instead: Text | undefined
  }[]
  readonly tools: readonly Text[]
  readonly materials: readonly { readonly name: Text; readonly figure: string | undefined }[]
  readonly cautions: readonly ManualCaution[]
  readonly measure: readonly { readonly do: Text; readonly how: Text | undefined }[]
  readonly branches: readonly {
    readonly found: Text
    readonly do: Text
    readonly method: string | undefined
    readonly procedure: string | undefined
  }[]
  readonly methods: readonly ManualMethod[]
  readonly checks: readonly Text[]
  readonly failures: readonly {
    readonly see: Text
    readonly do: Text
    readonly procedure: string | undefined
  }[]
  readonly stop: readonly Text[]
  readonly records: readonly Text[]
  readonly background: readonly { readonly text: Text; readonly source: string }[]
  readonly references: readonly string[]
  readonly reckoners: readonly ManualReckoner[]
  readonly next: string | undefined
  /** What the facility itself adds to this procedure. */
  readonly notes: readonly Text[]
  readonly sheet: ManualSheet
  readonly training: {
    readonly aims: readonly Text[]
    readonly show: readonly Text[]
    readonly practice: readonly Text[]
    readonly questions: readonly {
      readonly ask: Text
      readonly choices: readonly Text[]
      readonly right: number
      readonly why: Text
    }[]
  }
}

/** A table of one calculation over values that change in the field, in the facility's units. */
export type ManualReckoner = {
  readonly id: string
  readonly title: string
  readonly about: Text
  /** What runs down the rows, and the heads of the other columns. */
  readonly rowHead: string
  readonly columnHeads: readonly string[]
  /** What the columns are, when they are values of a second input. */
  readonly columnsHead: string | undefined
  readonly rows: readonly {
    readonly head: string
    readonly cells: readonly string[] /** The row of this facility's own value. */
    readonly own: boolean
  }[]
  readonly worksheet: { readonly number: string; readonly id: string }
  readonly estimate: boolean
}

export type ManualSymptom = {
  readonly id: string
  readonly says: Text
  readonly looks: Text
  readonly causes: readonly {
    readonly check: Text
    readonly cause: Text
    readonly procedure: string
  }[]
  readonly stop: Text
}

/** A list worked out for this facility; the first cell of a row is its head. */
export type ManualTable = {
  readonly id: string
  readonly title: Text
  readonly about: Text | undefined
  readonly heads: readonly Text[]
  readonly rows: readonly (readonly Text[])[]
}

/** A plan on pages of its own. */
export type ManualPlan = {
  readonly id: string
  readonly title: string
  readonly about: Text
  readonly drawings: readonly string[]
  readonly tables: readonly ManualTable[]
}

/**
 * A place to write on a form: width in sixths of the page, height in lines of handwriting. Where
 * there are choices, they are ticked.
 */
export type FormBox = {
  readonly label: Text
  readonly wide: number
  readonly tall: number
  readonly choices: readonly Text[]
}

/** How a cell is filled in: a word or number by hand, or a tick. */
export type FormWrite = 'line' | 'check'

/** A form to write on. */
export type ManualForm = {
  readonly id: string
  readonly title: Text
  readonly about: Text
  /** Who fills it in, when, and where it is kept. */
  readonly who: Text
  readonly moment: Text
  readonly kept: Text
  readonly boxes: readonly FormBox[]
  readonly table:
    | {
        /** `wide` is the width of a column against the others. */
        readonly columns: readonly {
          readonly head: Text
          readonly wide: number
          readonly write: FormWrite
        }[]
        /**
         * Rows that stand ready, by their first cell; `write` says how all of the row is filled in
         * where the columns do not.
         */
        readonly rows: readonly { readonly head: Text; readonly write: FormWrite | undefined }[]
        /** Blank rows at the least; the last page is filled with more. 0: none at all. */
        readonly spare: number
      }
    | undefined
  readonly after: readonly FormBox[]
  readonly sign: readonly Text[]
}

/**
 * A card for one person's pocket: a few large numbers, at most one table, what is dangerous, whom
 * to call.
 */
export type ManualCard = {
  readonly id: string
  readonly title: Text
  /** Whose pocket it is for. */
  readonly for: Text
  /** Names in `Manual.quantities`, all with a value, with the words that stand under them. */
  readonly figures: readonly { readonly name: string; readonly label: Text }[]
  readonly reckoner: ManualReckoner | undefined
  readonly cautions: readonly ManualCaution[]
  readonly phones: readonly Contact[]
}

/** One reading of the depth survey with the ground that it stands for, for the map; meters. */
export type MapCell = {
  readonly from: number
  readonly to: number
  readonly inner: number
  readonly outer: number
  readonly value: number
  readonly text: string
}

/** What this facility has, measured against what the figures ask. */
export type Finding = {
  readonly id: string
  readonly severity: 'serious' | 'plan' | 'note'
  readonly title: Text
  readonly text: Text
  readonly do: Text
  readonly figures: readonly string[]
  /** Where in the facility file it comes from, such as `facility.yaml:31`. */
  readonly where: readonly string[]
}

/** A value that stands in for a measurement, and how much hangs on it. */
export type ToMeasure = {
  readonly label: string
  readonly text: string
  readonly howTo: string
  /** How many figures move when it is a tenth off, and which moves most by how many percent. */
  readonly figures: number
  readonly most: string
  readonly percent: number
}

/** A line of "facility at a glance". */
export type GlanceRow = {
  readonly label: string
  readonly text: string
  readonly provenance: Provenance
  readonly howTo: string
}

export type Contact = {
  readonly role: string
  readonly roleTitle: string
  readonly name: string
  readonly phone: string
  readonly note: string
}

/** A place of help outside the grounds; what is not known is empty. */
export type PlaceOfHelp = { readonly name: string; readonly phone: string; readonly way: string }

/**
 * The emergency page. What the facility file does not say is empty, or an empty list: the page has
 * a line for it to be filled in by hand.
 */
export type Emergency = {
  readonly number: string
  readonly radio: string
  readonly address: string
  readonly gate: string
  readonly way: string
  /** As read to a dispatcher: "40.61975° N, 83.91131° W". */
  readonly coordinates: string
  readonly meetingPoint: string
  /** Who may stop racing. */
  readonly stops: readonly Contact[]
  /**
   * Whoever else is called, in the order of the page; a role that nobody fills has neither name nor
   * phone.
   */
  readonly contacts: readonly Contact[]
  readonly hospital: PlaceOfHelp
  readonly equineClinic: PlaceOfHelp
  readonly firstAid: readonly string[]
  readonly defibrillator: readonly string[]
  readonly extinguishers: readonly string[]
}

export type RaceDay = {
  readonly date: string
  readonly firstPost: string
  readonly races: number
  readonly interval: string
}

/** Dimensions that drawings are made from, SI. */
export type OvalGeometry = {
  readonly straight: number
  readonly radius: number
  readonly offset: number
  readonly lap: number
  readonly railLength: number
  readonly widthStraights: number
  readonly widthTurns: number
  readonly crossFallStraights: number
  readonly crossFallTurns: number
  readonly stationSpacing: number
  readonly rail: Rail
  /** Counterclockwise seen from above unless the facility says otherwise. */
  readonly direction: 'counterclockwise' | 'clockwise'
  /**
   * Direction in which horses run on the home straight, degrees clockwise from true north;
   * undefined where nobody has said.
   */
  readonly homeBearing: number | undefined
  readonly cushionDepth: number
  readonly ridgeHeight: number
  /**
   * Gates, drains, water points …: station along the rail from the start of the home straight, m;
   * offset from the rail, m.
   */
  readonly marks: readonly {
    readonly kind: 'gate' | 'drain' | 'water' | 'finish' | 'stand' | 'stockpile'
    readonly name: string
    readonly station: number
    readonly offset: number /** Gate to which a stockpile is hauled, by name. */
    readonly gate: string | undefined
  }[]
}

export type Machine = {
  readonly id: string
  readonly name: string
  readonly can: readonly Capability[]
  readonly from: string
  readonly facts: readonly GlanceRow[]
}

/** One facility's manual: plain data, everything that the pages say. */
export type Manual = {
  readonly facility: {
    readonly id: string
    readonly name: string
    readonly town: string
    readonly lang: string
    readonly system: UnitSystem
    readonly currency: string
    readonly paper: Paper
    readonly binder: {
      readonly sides: 1 | 2
      readonly sections: 'right-hand' | 'next'
      readonly dividers: DividerKind
    }
    /**
     * Papers on which each posted sheet is printed; the first is the one that the site links to.
     */
    readonly sheetPapers: readonly SheetPaper[]
    readonly material: Material
    readonly revision: string
    /** Address of the site without a final slash, when it is put on a host: makes QR codes. */
    readonly siteAddress: string | undefined
    /** "half-mile", "800 m" … */
    readonly ovalName: string
  }
  /** `YYYY-MM-DD`, given from outside. */
  readonly date: string
  readonly geometry: OvalGeometry
  readonly glance: readonly { readonly title: string; readonly rows: readonly GlanceRow[] }[]
  readonly machines: readonly Machine[]
  readonly contacts: readonly Contact[]
  readonly emergency: Emergency
  readonly raceDays: readonly RaceDay[]
  readonly sections: readonly {
    readonly id: string
    readonly number: number
    readonly title: string
    readonly about: Text
    readonly procedures: readonly string[]
  }[]
  readonly procedures: readonly ManualProcedure[]
  /** All cautions that some procedure or card here uses. */
  readonly cautions: readonly ManualCaution[]
  readonly symptoms: readonly ManualSymptom[]
  readonly chapters: readonly {
    readonly id: string
    readonly title: string
    readonly place: 'front' | 'back'
    readonly text: Text
  }[]
  readonly terms: readonly { readonly term: string; readonly means: Text }[]
  /**
   * Where the terms of the glossary are used: procedures, and ids of places in them, at most one
   * for each part of a procedure.
   */
  readonly termIndex: readonly {
    readonly term: string
    readonly procedures: readonly string[]
    readonly places: readonly string[]
    readonly throughout: boolean
  }[]
  readonly reckoners: readonly ManualReckoner[]
  readonly plans: readonly ManualPlan[]
  readonly forms: readonly ManualForm[]
  readonly cards: readonly ManualCard[]
  /** The latest depth survey, as far as a map needs it. */
  readonly cushionMap:
    | {
        readonly date: string
        readonly target: number
        readonly tolerance: number
        readonly cells: readonly MapCell[]
      }
    | undefined
  /** The latest sieve analysis: openings and sizes in meters. */
  readonly grainCurve:
    | {
        readonly points: readonly {
          readonly name: string
          readonly opening: number
          readonly passing: number
        }[]
        readonly grit: number
        readonly gritText: string
        readonly sizes: readonly {
          readonly name: string
          readonly share: number
          readonly size: number
        }[]
      }
    | undefined
  readonly charts: Charts
  readonly findings: readonly Finding[]
  /** What nobody has measured, the most telling first. */
  readonly toMeasure: readonly ToMeasure[]
  readonly quantities: Readonly<Record<string, NamedQuantity>>
  readonly worksheets: readonly Worksheet[]
  readonly figures: readonly Figure[]
  /** Sources that something in the manual cites, as printed references. */
  readonly sources: readonly {
    readonly id: string
    readonly text: string /** Number or, without one, title: as a table has room for. */
    readonly short: string
  }[]
}
