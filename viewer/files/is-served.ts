// Whether a server that has a design stands behind the page; on a static host there is none.

export const isServed = (): boolean =>
  document.querySelector("meta[name=consolewright-design]") !== null;
