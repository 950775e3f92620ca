/** The standard in the name of a requirement, which is `<standard>/<clause>/<slug>`. */
export const standardOfRequirement = (requirement: string): string => requirement.slice(0, requirement.indexOf('/'))
