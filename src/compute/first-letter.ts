/** A sentence as it goes on in another one: its first letter small. */
export const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** Words as they begin a sentence: their first letter large. */
export const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
