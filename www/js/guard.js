/**
 * What runs every reaction of a page: whatever breaks in one, at once or later, is handled by `broken()`, which leaves
 * no number in view.
 */
export function guard(broken) {
  const caught = (fault) => {
    broken();
    console.error(fault);
    return null;
  };
  return (reaction) => {
    try {
      const outcome = reaction();
      return outcome instanceof Promise ? outcome.catch(caught) : outcome;
    } catch (fault) {
      return caught(fault);
    }
  };
}
