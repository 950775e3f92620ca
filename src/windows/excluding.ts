/**
 * The smallest sets of items that cannot be had together. For intervals these are always pairs (Helly's theorem in one dimension:
 * intervals that meet two by two have a point in common); sets of kinds may take more.
 * @param isPossible whether these items can be had together; what is impossible stays so with more items
 * @returns all sets of the least size, in the order of the items; none when all can be had together
 */
export function smallestExcluding<T>(items: readonly T[], isPossible: (items: readonly T[]) => boolean): T[][] {
  if (isPossible(items)) return []
  for (let size = 1; size < items.length; size++) {
    const excluding = subsets(items, size).filter((subset) => !isPossible(subset))
    if (excluding.length > 0) return excluding
  }
  return [[...items]]
}

function subsets<T>(items: readonly T[], size: number): T[][] {
  if (size === 0) return [[]]
  return items.flatMap((item, i) => subsets(items.slice(i + 1), size - 1).map((rest) => [item, ...rest]))
}
