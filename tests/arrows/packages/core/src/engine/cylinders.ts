export const cylinders = 8;
