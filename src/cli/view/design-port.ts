// The port of a design's page. A browser keeps what a page stores by its address, so that one design keeps one port from
// run to run: else a recovery copy would not be found again.

/** Below the ports that systems hand out by themselves (32768 and up on Linux, 49152 and up by RFC 6335). */
const FIRST = 20_000;
const COUNT = 10_000;

export const designPort = (id: string): number =>
  FIRST + (Number.parseInt(id.slice(0, 8), 16) % COUNT);

/** null where it is no port. 0: any that is free. */
export const readPort = (written: string): number | null => {
  const port = /^\d{1,5}$/.test(written) ? Number(written) : Number.NaN;
  return port <= 65_535 ? port : null;
};
