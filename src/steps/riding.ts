/** The caution that stands on every page of a flow before its first question. The others come once they are needed. */
export const RIDING = 'Never while riding. Bike on its stand, rider doing nothing else.';
