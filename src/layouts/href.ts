/** The address of a page or file of this site, wherever below its origin the site lives. */
export const href = (path = ''): string => `${import.meta.env.BASE_URL.replace(/\/?$/, '/')}${path.replace(/^\//, '')}`;
