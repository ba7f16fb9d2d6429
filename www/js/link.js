// Addresses that carry a plan. No DOM here.
// In the pocket edition all pages share one address, and a page's name stands before the plan: #compare/v=1&…

/** Whether a fragment is one of ours and not the name of a place on the page. */
export function carriesPlan(fragment) {
  return /^#?(?:[\w-]+\/)?\w+=/u.test(fragment); // a plan without its beginning too: what is amiss is said
}

/** The plan's part of an address or of a fragment. */
export function planIn(address) {
  return address.replace(/^[^#]*#(?:[\w-]+\/)?/u, "");
}

/** The address with this plan in place of the one it has. */
export function withPlan(address, plan) {
  const [bare] = /^[^#]*(?:#[\w-]+\/)?/u.exec(address);
  return plan === "" ? bare : `${bare}${bare.includes("#") ? "" : "#"}${plan}`;
}

/**
 * The text to copy: a whole address where one is known, else the fragment alone.
 * From disk the page's own address means nothing to anybody else, but the one it is published at does.
 */
export function linkText(plan, publishedAt, here) {
  const own = withPlan(here, plan);
  if (/^https?:/u.test(here)) return { text: own, whole: true };
  const fragment = own.replace(/^[^#]*#?/u, "#");
  const published = publishedAt.trim().replace(/#.*$/su, "");
  return { text: published + fragment, whole: published !== "" };
}

/** A fragment without the fields of these ids. */
export function withoutParts(fragment, ids) {
  return fragment.split("&").filter((part) => !ids.has(part.split("=")[0])).join("&");
}
