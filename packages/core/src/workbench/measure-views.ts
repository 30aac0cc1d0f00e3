/** What the screens under Measure and Fit show, as data; computed whole from engine + log, like every view. */
import type { Area, InstrumentKind, Slot, VerdictWord } from '../assess/index.js';
import type { Figure } from '../drawing/index.js';
import type { Caution, Given, Hindrance, Progress } from './views.js';

/** How this device shows figures; nothing stored depends on it. */
export interface ShownIn {
  readonly length: 'mm' | 'in';
}

/** A size with its verdict, as one row or tile. Every number can be opened: `working`, `sources`. */
export interface FindingView {
  readonly key: string;
  readonly property: string;
  readonly title: string;
  readonly place: string;
  readonly verdict: VerdictWord;
  /** "2.4979 in", empty without data. */
  readonly value: string;
  /** "±0.0003 in"; empty where not known. */
  readonly doubt: string;
  /** "0.0010 to 0.0025 in", with the wear limit beside it where there is one. */
  readonly limit: string;
  readonly wearLimit?: string;
  /** Where the limit comes from: manual and page. */
  readonly origin: string;
  readonly distance?: string;
  readonly nearEnd?: 'low' | 'high';
  /** "as new", "worn, usable", "past the wear limit", "2 of 6 read". */
  readonly words: string;
  /** What a general rule of wear says where the maker prints no wear limit: advice beside the verdict, never a limit. */
  readonly advice?: { readonly words: string; readonly source: string };
  readonly working: readonly string[];
  readonly sources: readonly string[];
  readonly cautions: readonly string[];
  readonly again?: { readonly slot: Slot; readonly words: string };
  /** Where to read on: the first reading that is missing, the one that decides, else the first that formed it. */
  readonly slot?: Slot | undefined;
}

export interface SheetRow {
  /** Feature id; the screen is at `measure/<feature>`. */
  readonly feature: string;
  readonly title: string;
  readonly progress: Progress;
  readonly finished: boolean;
  /** Worst verdict among its findings; `no data` before anything is read. */
  readonly verdict: VerdictWord;
  readonly vanishes: boolean;
  /** A cross-check or a look: nothing that is decided waits for it. */
  readonly optional?: boolean;
}
export interface InstrumentView {
  readonly id: string;
  readonly name: string;
  readonly kind: InstrumentKind;
  readonly unit: string;
  readonly places: number;
  /** "zero checked 10:04, reads 0.0002 in high" or "not checked today". */
  readonly check: string;
  readonly checked: boolean;
  readonly drift?: string;
}
export interface MeasureView {
  readonly title: string;
  readonly areas: readonly {
    readonly area: Area;
    readonly title: string;
    readonly sheets: readonly SheetRow[];
    readonly progress: Progress;
    /** The worst of its sheets; `no data` before anything is read. */
    readonly verdict: VerdictWord;
  }[];
  /** Before the first reading: clean, same temperature, gauge checked. */
  readonly before: readonly Hindrance[];
  readonly temperature?: string;
  readonly instruments: readonly InstrumentView[];
  readonly next?: { readonly feature: string; readonly words: string };
  /** Readings that decide an undecided verdict, most useful first. */
  readonly again: readonly { readonly slot: Slot; readonly feature: string; readonly words: string }[];
  readonly progress: Progress;
  readonly missing: readonly string[];
  readonly cautions: readonly Caution[];
}

export interface Cell {
  readonly slot: Slot;
  /** "cylinder 3, top, thrust direction": shown on the armed band and spoken. */
  readonly name: string;
  readonly state: 'empty' | 'read' | 'disagrees';
  readonly text?: string;
  readonly given?: Given;
  /** How many standing readings. */
  readonly readings: number;
}
export interface WorksheetRow {
  readonly place: string;
  readonly name: string;
  readonly cells: readonly Cell[];
  readonly findings: readonly FindingView[];
  /** 1 as found; higher after work. */
  readonly occasion: number;
  /** Readings of earlier occasions, for comparison. */
  readonly before: readonly string[];
}
export interface WorksheetView {
  readonly feature: string;
  readonly title: string;
  readonly how: string;
  readonly condition: string;
  /** What was taken for granted about it where the sheet is silent. */
  readonly assumed: readonly string[];
  readonly instrumentKind: InstrumentKind;
  readonly instrument?: InstrumentView;
  /** Gauges of the person that can read this. */
  readonly instruments: readonly InstrumentView[];
  readonly unit: string;
  /** `group`: what several columns share, e.g. the height; `name` is then the rest. */
  readonly columns: readonly { readonly id: string; readonly name: string; readonly group?: string }[];
  readonly rows: readonly WorksheetRow[];
  /** True where a figure may stand below nothing: what can lie under its face. */
  readonly signed?: boolean;
  /** Slots in the order of walking round. */
  readonly order: readonly Slot[];
  readonly current?: Slot;
  readonly progress: Progress;
  readonly finished: boolean;
  /** Where to go on once this sheet is finished; absent where nothing is left to read. */
  readonly next?: { readonly feature: string; readonly title: string; readonly optional: boolean };
  readonly cautions: readonly Caution[];
  /** Part with its stations; readings and verdicts are marked; touches are slots. Worked out when it is asked for. */
  readonly figure?: Figure | undefined;
}

export interface AlternativeView {
  readonly id: string;
  readonly words: string;
  readonly figures: readonly { readonly name: string; readonly text: string }[];
  readonly verdict: VerdictWord;
  readonly against: readonly string[];
  readonly possible: boolean;
  readonly recommended: boolean;
  readonly orders: readonly string[];
  readonly buys: readonly string[];
}
export interface DecisionView {
  readonly id: string;
  readonly scope: string;
  readonly title: string;
  readonly question: string;
  readonly area: Area;
  readonly state: 'waiting' | 'open' | 'decided' | 'changed';
  readonly missing: readonly string[];
  readonly alternatives: readonly AlternativeView[];
  readonly proof: string;
  readonly working: readonly string[];
  readonly sources: readonly string[];
  readonly cautions: readonly string[];
  readonly decided?: Given & {
    readonly alternative: string;
    readonly words: string;
    readonly reason: string;
    /** What is computed now and was different when the person decided. */
    readonly differs: readonly string[];
  };
}
export interface FitView {
  readonly findings: readonly { readonly area: Area; readonly title: string; readonly rows: readonly FindingView[] }[];
  readonly counts: Readonly<Record<VerdictWord, number>>;
  readonly again: MeasureView['again'];
  readonly decisions: readonly DecisionView[];
  /** Cross-checks of the sheet: part ranges that cannot give the printed clearance, misprints. */
  readonly contradictions: readonly string[];
  readonly cautions: readonly Caution[];
}

export interface OrderLineView {
  readonly id: string;
  readonly number: number;
  readonly operation: string;
  readonly part: string;
  readonly target: string;
  readonly tolerance: string;
  readonly places: readonly {
    readonly name: string;
    readonly target: string;
    readonly fittedTo: string;
    /** This place measured again; absent where the work cannot be measured. */
    readonly returned?: { readonly state: VerdictWord; readonly words: string };
  }[];
  readonly finish: string;
  readonly fittedTo: string;
  readonly with: string;
  readonly notes: readonly string[];
  readonly decidedBy: Given & { readonly reason: string };
  /** Measured again when it came back. */
  readonly returned: { readonly state: VerdictWord; readonly words: string };
}
export interface OrderView {
  readonly title: string;
  readonly invented: boolean;
  readonly lines: readonly OrderLineView[];
  readonly buys: readonly {
    readonly part: string;
    readonly partNumber: string;
    readonly size: string;
    readonly count: number;
    readonly for: string;
  }[];
  /** Decisions that are still open: the order is not whole. */
  readonly open: readonly string[];
  readonly measuredWith: readonly string[];
  readonly cautions: readonly Caution[];
}
