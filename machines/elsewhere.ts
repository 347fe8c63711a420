/** The cause that stands in the table of a flow for all causes that another flow looks for. */
export const elsewhere = (flow: string): string => `elsewhere: ${flow}`;
