/** What a word of the glossary is called in an address: letters and digits. */
export const slugOf = (word: string): string =>
  word
    .toLowerCase()
    .match(/[a-z0-9Ω]+/g)
    ?.join('-') ?? word;
