// How large a file of a design may be, wherever it is read from: the command line, a folder, files that were dropped, the
// server of the page. Bytes.

/** Larger than any text that the design reader takes, so that its own finding comes first. */
export const MOST_TEXT_BYTES = 4_000_000;

/** A shape of about a million triangles. */
export const MOST_BINARY_BYTES = 50_000_000;

/** A photograph of 50 million pixels as a camera saves it. */
export const MOST_PICTURE_BYTES = 25_000_000;
