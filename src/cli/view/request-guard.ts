// Who may ask: only a page that this server served, in a browser that really calls it by a loopback name. A site that
// points its own name at this machine is refused by its Host, another site's script by its Origin, another program or
// user on the machine by the key. Takes a request's head, gives the reason to refuse it or null.

import { timingSafeEqual } from "node:crypto";
import type { IncomingHttpHeaders } from "node:http";

export interface RequestHead {
  readonly method: string;
  readonly headers: IncomingHttpHeaders;
  /** As they were sent, name and value by turns: `headers` has one of each. */
  readonly rawHeaders: readonly string[];
}

export interface Refusal {
  readonly status: 400 | 401 | 403 | 405;
  readonly why: string;
}

/** Names that a browser may call this server by. */
export const hostsOf = (port: number): readonly string[] =>
  LOOPBACK_NAMES.flatMap((name) => (port === 80 ? [name, `${name}:80`] : [`${name}:${port}`]));

const LOOPBACK_NAMES = ["127.0.0.1", "localhost", "[::1]"];

/** For every request: its Host, and its Origin where it has one. */
export const refuseStranger = (
  { method, headers, rawHeaders }: RequestHead,
  hosts: readonly string[],
): Refusal | null => {
  const twice = SAID_ONCE.find((name) => timesSaid(name, rawHeaders) > 1);
  if (twice !== undefined) return { status: 400, why: `the request says its ${twice} twice` };
  const host = headers.host ?? "";
  if (host === "") return { status: 403, why: "the request says no Host" };
  if (!hosts.includes(host)) return { status: 403, why: `this server is not called ${host}` };
  const { origin } = headers;
  // Browsers send it with every PUT; a plain GET of one's own page has none.
  if (origin === undefined && method === "PUT") return { status: 403, why: "no origin is given" };
  if (origin !== undefined && origin !== `http://${host}`)
    return { status: 403, why: "another page asks" };
  const site = headers["sec-fetch-site"];
  if (typeof site === "string" && !OWN_SITES.includes(site))
    return { status: 403, why: "another page asks" };
  return METHODS.includes(method) ? null : { status: 405, why: `${method} is not served here` };
};

/** Who else reads the request might go by the other one (RFC 9112, 3.2, of Host). */
const SAID_ONCE = ["Host", "Origin", "Authorization"];

const timesSaid = (name: string, rawHeaders: readonly string[]): number =>
  rawHeaders.filter((each, at) => at % 2 === 0 && each.toLowerCase() === name.toLowerCase()).length;

/** `none`: the person typed the address or opened it from another program (W3C Fetch Metadata). */
const OWN_SITES = ["same-origin", "none"];

export const METHODS = ["GET", "HEAD", "PUT"];

/** For the design: the key that was said with the address. */
export const refuseKeyless = (
  { headers }: Pick<RequestHead, "headers">,
  key: string,
): Refusal | null => {
  const given = /^Bearer ([\w-]+)$/.exec(headers.authorization ?? "")?.[1] ?? "";
  return isSame(given, key)
    ? null
    : {
        status: 401,
        why: "the key is missing or of an earlier run: open the address printed by view",
      };
};

const isSame = (given: string, key: string): boolean => {
  const [a, b] = [Buffer.from(given), Buffer.from(key)];
  return a.length === b.length && timingSafeEqual(a, b);
};
