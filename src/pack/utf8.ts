// Text to the bytes that are written, and back. UTF-8 without a mark, the line ends as given.

import { strFromU8, strToU8 } from "fflate";

export const utf8Bytes = (text: string): Uint8Array => strToU8(text);

export const utf8Text = (bytes: Uint8Array): string => strFromU8(bytes);
