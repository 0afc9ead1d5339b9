/** What the columns of the budget are called. */
export const budgetColumns = {
  quantity: 'Quantity',
  uncertainty: 'Standard uncertainty',
  evaluation: 'Type',
  distribution: 'Distribution',
  sensitivity: 'Sensitivity',
  contribution: 'Adds to the speed',
  degrees: 'Degrees of freedom',
  share: 'Share',
};
