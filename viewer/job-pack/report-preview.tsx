// The report in HTML as it looks when it is opened, in a frame of its own that may do nothing: no scripts, no addresses, no word
// with the page (WHATWG HTML, the iframe's `sandbox` with nothing allowed). Of styles the page's policy lets in the report's one.

import type { JSX } from "preact";
import { useMemo } from "preact/hooks";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { utf8Text } from "../../src/pack/utf8.ts";

export function ReportPreview({ file }: { readonly file: PackFile }): JSX.Element {
  const text = useMemo(() => utf8Text(file.bytes), [file]);
  return <iframe class="report-preview" sandbox="" srcDoc={text} title={file.path} />;
}
