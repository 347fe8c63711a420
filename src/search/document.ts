/** One thing that can be found. Short fields: the file that holds all of them is loaded when somebody begins to type. */
export interface Document {
  /** `complaint/no-rear-sound`, `read/polarity`, `calculate/whine`, `word/gain`, `cause/coil-open`, `step/run-ohms`, `page/tones` */
  readonly id: string;
  readonly title: string;
  /** Words by which people call it, misspelt and foreign ones included. */
  readonly words: string;
  /** Where it leads, below the root of the site. */
  readonly path: string;
  /** One sentence about it. */
  readonly text?: string;
  /** The flow that starts from it, for a complaint that has one. */
  readonly flow?: string;
  /** For a complaint that no flow knows: what to measure first, and the title of what it leads to. */
  readonly measure?: string;
  readonly reads?: string;
}

export const KINDS = {
  complaint: 'Find out',
  cause: 'A cause',
  step: 'A check',
  read: 'To read',
  calculate: 'To calculate',
  word: 'A word',
  page: 'A page',
} as const;
export type Kind = keyof typeof KINDS;

export const kindOf = ({ id }: Document): Kind => id.slice(0, id.indexOf('/')) as Kind;
