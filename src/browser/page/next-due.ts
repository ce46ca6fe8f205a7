/**
 * Which of these days come next, today included, by their places in the list.
 * @param dates `YYYY-MM-DD`, in order.
 */
export const nextDue = (
  dates: readonly string[],
  today: string,
  count: number,
): readonly number[] => dates.flatMap((date, i) => (date >= today ? [i] : [])).slice(0, count)
