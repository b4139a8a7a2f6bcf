// A paragraph in lines that a terminal shows whole.

const WIDTH = 78;

export const wrapped = (paragraph: string): readonly string[] => {
  const lines: string[] = [];
  let line = "";
  for (const word of paragraph.split(/\s+/)) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (longer.length > WIDTH && line !== "") {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, line];
};
