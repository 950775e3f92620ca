/** The version of this service, as in package.json. Part of every report and of its id. */
export const VERSION = '0.1.0'
