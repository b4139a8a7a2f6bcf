// A count with its word: "1 bay", "2 bays".

export const countWords = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;
