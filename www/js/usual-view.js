// How numbers are written where nobody has chosen yet. No DOM here.

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

/** The view for readers of a language as browsers name it: feet and pounds for the United States, their decimal mark. */
export function usualView(language = "") {
  // A bare "en" says of no country that it is meant.
  const named = /-/u.test(language) ? regionOf(language) : undefined;
  return { system: named === "US" ? "us" : "si", decimal: markOf(language || "en") };
}
