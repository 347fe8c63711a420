/** A day as `2026-05-03`, said as `3 May 2026`. */
export const dayInWords = (on: string): string =>
  new Date(`${on}T12:00:00Z`).toLocaleDateString('en-GB', {
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone: 'UTC',
  });
