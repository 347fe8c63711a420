/** Where the site will live below its origin: `/`, or the value of SITE_BASE with a slash at both ends. */
export function siteBase(env: NodeJS.ProcessEnv = process.env): string {
  const path = (env['SITE_BASE'] ?? '/').replace(/^\/+|\/+$/g, '');
  return path === '' ? '/' : `/${path}/`;
}

/** The folder that the site is built into. */
export const siteFolder = (env: NodeJS.ProcessEnv = process.env): string => env['SITE_OUT'] || 'dist';
