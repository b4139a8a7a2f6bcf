// A paper of the pack as it is meant to be read: headings, lists, tables and the pack's own pictures. Every word is set as text, so
// that nothing that a design says can become markup.

import type { JSX } from "preact";
import { useMemo } from "preact/hooks";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { utf8Text } from "../../src/pack/utf8.ts";
import { type PaperBlock, type PaperItem, type PaperWords, paperBlocks } from "./paper-blocks.ts";
import { PicturePreview } from "./picture-preview.tsx";

export function PaperPreview(props: {
  readonly file: PackFile;
  /** Of the pack: its pictures may stand in the paper. */
  readonly files: readonly PackFile[];
}): JSX.Element {
  const { file, files } = props;
  const blocks = useMemo(() => paperBlocks(utf8Text(file.bytes)), [file]);
  return (
    <article class="paper-preview" aria-label={file.path}>
      {blocks.map((block, index) => (
        <Block key={index} block={block} files={files} />
      ))}
    </article>
  );
}

function Block(props: {
  readonly block: PaperBlock;
  readonly files: readonly PackFile[];
}): JSX.Element {
  const { block, files } = props;
  switch (block.kind) {
    case "heading":
      return <Heading level={block.level} words={block.words} />;
    case "paragraph":
      return (
        <p>
          <Words words={block.words} />
        </p>
      );
    case "picture": {
      const picture = files.find(({ path }) => path === block.path);
      return picture === undefined ? (
        <p>{block.name}</p>
      ) : (
        <PicturePreview file={picture} name={block.name} />
      );
    }
    case "list":
      return block.isNumbered ? (
        <ol>
          <Items items={block.items} />
        </ol>
      ) : (
        <ul>
          <Items items={block.items} />
        </ul>
      );
    case "table":
      return <Table block={block} />;
  }
}

/** Below the page's own headings: the room has its name in the second level. */
function Heading(props: {
  readonly level: number;
  readonly words: readonly PaperWords[];
}): JSX.Element {
  const words = <Words words={props.words} />;
  return props.level === 1 ? (
    <h3>{words}</h3>
  ) : props.level === 2 ? (
    <h4>{words}</h4>
  ) : (
    <h5>{words}</h5>
  );
}

function Items({ items }: { readonly items: readonly PaperItem[] }): JSX.Element {
  return (
    <>
      {items.map(({ isTick, words, inner }, index) => (
        <li key={index} class={isTick ? "tick" : undefined}>
          {isTick && <span aria-hidden="true">☐ </span>}
          <Words words={words} />
          {inner.length > 0 && (
            <ul>
              {inner.map((each, at) => (
                <li key={at}>
                  <Words words={each} />
                </li>
              ))}
            </ul>
          )}
        </li>
      ))}
    </>
  );
}

function Table({
  block,
}: {
  readonly block: Extract<PaperBlock, { readonly kind: "table" }>;
}): JSX.Element {
  const classOf = (column: number): string | undefined =>
    block.isNumber[column] === true ? "number" : undefined;
  return (
    <div class="table-preview">
      <table>
        <thead>
          <tr>
            {block.head.map((cell, column) => (
              <th key={column} scope="col" class={classOf(column)}>
                <Words words={cell} />
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {block.rows.map((row, index) => (
            <tr key={index}>
              {row.map((cell, column) => (
                <td key={column} class={classOf(column)}>
                  <Words words={cell} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Words({ words }: { readonly words: readonly PaperWords[] }): JSX.Element {
  return (
    <>
      {words.map(({ kind, words: said }, index) =>
        kind === "strong" ? (
          <strong key={index}>{said}</strong>
        ) : kind === "code" ? (
          <code key={index}>{said}</code>
        ) : (
          said
        ),
      )}
    </>
  );
}
