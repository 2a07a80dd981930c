/** A count of fewer people is too few to tell, a surgeon's own or a published one. */
export const enoughPeople = 30;
