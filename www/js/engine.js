// The only door to the arithmetic. The build says where "boughline/inline" is.
export * from "boughline/inline";
