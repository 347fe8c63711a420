/** What a feed of the head unit may lose on the way from the battery. Common practice, no published source. */
export const FEED_LOSES_AT_MOST_V = 0.5;
