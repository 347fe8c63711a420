import course from '../../content/course.json' with { type: 'json' };

/** The articles in the order in which they are read by somebody who learns the trade. */
export const COURSE: readonly { readonly title: string; readonly articles: readonly string[] }[] = course;

export const courseOrder = (): readonly string[] => COURSE.flatMap(({ articles }) => articles);
