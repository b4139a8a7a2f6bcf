// Ids for the elements of one SVG file: a feature's name, restricted and made unique in the file.
// Letters, digits and . _ - / @ stay (so `brake/clamp@backing` can be found again); anything else becomes `_`.
// SVG 2, section 5.2: an id holds no white space and is not empty.

const LONGEST_ID = 80;

/** A function that gives each feature its id; `taken` are ids that the file uses for other things. */
export const elementIds = (taken: readonly string[]): ((feature: string) => string) => {
  const used = new Set<string>(taken);
  return (feature) => {
    const wanted = restrictedId(feature);
    let id = wanted;
    for (let count = 2; used.has(id); count += 1) id = `${wanted}.${count}`;
    used.add(id);
    return id;
  };
};

const restrictedId = (feature: string): string => {
  const kept = Array.from(feature.slice(0, LONGEST_ID), (character) =>
    /[A-Za-z0-9._/@-]/.test(character) ? character : "_",
  ).join("");
  return /^[A-Za-z_]/.test(kept) ? kept : `_${kept}`;
};
