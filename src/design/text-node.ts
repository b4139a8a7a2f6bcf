// A design text as a tree of scalars, maps and lists, before anything is given a meaning.
// Every node knows where it stands and by which path of keys it is reached ("components.brake.at").

import type { Span } from "../diagnostics/finding.ts";

export type TextNode = ScalarNode | EmptyNode | MapNode | ListNode | UnreadableNode;

export interface ScalarNode {
  readonly kind: "scalar";
  readonly text: string;
  readonly style: "plain" | "quoted" | "block";
  readonly span: Span;
  readonly path: string;
  /** A comment that begins right behind the value without a space of its own: `PUMP #3`. */
  readonly eaten: Span | null;
}

/** A key or list dash with nothing behind it. */
export interface EmptyNode {
  readonly kind: "empty";
  readonly span: Span;
  readonly path: string;
  readonly eaten: Span | null;
}

export interface MapNode {
  readonly kind: "map";
  readonly flow: boolean;
  /** In the order of the text; a key written twice is here twice. */
  readonly entries: readonly MapEntry[];
  readonly span: Span;
  readonly path: string;
}

export interface MapEntry {
  readonly key: string;
  readonly keySpan: Span;
  readonly value: TextNode;
}

export interface ListNode {
  readonly kind: "list";
  readonly flow: boolean;
  readonly items: readonly TextNode[];
  readonly span: Span;
  readonly path: string;
}

/** Refused while the tree was built; its finding has been given. */
export interface UnreadableNode {
  readonly kind: "unreadable";
  readonly span: Span;
  readonly path: string;
}

export const joinedPath = (path: string, key: string): string =>
  path === "" ? key : `${path}.${key}`;

/** The beginning of a message about a node: "components.brake.at: ". */
export const about = (node: { readonly path: string }): string =>
  node.path === "" ? "" : `${node.path}: `;
