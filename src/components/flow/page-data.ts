/** Another flow that this one leads to. */
export interface FlowLink {
  readonly title: string;
  /** Below the root of the site. */
  readonly path: string;
}

/**
 * What the page of a flow knows besides the flow. It is written into the built page, so that no page carries the list of
 * all flows.
 */
export interface PageData {
  /** The flows that it can hand a case over to, or take its answers to, by id. */
  readonly links: Readonly<Record<string, FlowLink>>;
  /** Those of them that its answers can be taken to at the end. */
  readonly goesOnIn: readonly string[];
  /** Something drawn under the open step and in the verdict. */
  readonly picture?: 'profile';
}
