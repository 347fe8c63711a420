/** A duration the way people say it. */
export function minutesInWords(minutes: number): string {
  if (minutes < 1) return 'under a minute';
  const whole = Math.round(minutes);
  return whole === 1 ? 'about a minute' : `about ${whole} minutes`;
}
