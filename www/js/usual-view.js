// How numbers are written where nobody has chosen yet. No DOM here.

/** Readers of whom it is known: the first look into the browser's tables of languages takes a phone a tenth of a second. */
export const KNOWN = new Map(["en", "en-US", "en-GB", "en-AU", "en-CA", "en-IE", "en-IN", "en-NZ"]
  .map((language) => [language, { system: language === "en-US" ? "us" : "si", decimal: "." }]));

const regionOf = (language) => {
  try {
    return new Intl.Locale(language).maximize().region;
  } catch {
    return undefined;
  }
};

const markOf = (language) => {
  try {
    return new Intl.NumberFormat(language).format(1.5).includes(",") ? "," : ".";
  } catch {
    return ".";
  }
};

/** The view by the browser's tables: feet and pounds for the United States, the decimal mark of the language. */
export function viewByTables(language) {
  // A bare "en" says of no country that it is meant.
  const named = /-/u.test(language) ? regionOf(language) : undefined;
  return { system: named === "US" ? "us" : "si", decimal: markOf(language) };
}

/** The view for readers of a language as browsers name it. */
export const usualView = (language = "") => KNOWN.get(language || "en") ?? viewByTables(language);
