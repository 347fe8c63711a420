/** The four places that sound comes from. Several speakers on one channel are one corner. */
export const CORNERS = ['front-left', 'front-right', 'rear-left', 'rear-right'] as const;
export type Corner = (typeof CORNERS)[number];
export const isCorner = (where: string): where is Corner => (CORNERS as readonly string[]).includes(where);
export type Axle = 'front' | 'rear';

export const axleOf = (corner: Corner): Axle => (corner.startsWith('front') ? 'front' : 'rear');
export const sideOf = (corner: Corner) => (corner.endsWith('left') ? 'left' : 'right');
export const cornersOf = (axle: Axle): readonly Corner[] => CORNERS.filter((corner) => axleOf(corner) === axle);
/** The front corner on the same side. */
export const inFrontOf = (corner: Corner): Corner => (sideOf(corner) === 'left' ? 'front-left' : 'front-right');

export type PerCorner<T> = Readonly<Record<Corner, T>>;
export const perCorner = <T>(make: (corner: Corner) => T): PerCorner<T> => ({
  'front-left': make('front-left'),
  'front-right': make('front-right'),
  'rear-left': make('rear-left'),
  'rear-right': make('rear-right'),
});
