import type { Handler } from '../handle.ts';
import { answerCreateApiToken } from './api-tokens/create-api-token.ts';
import { answerListApiTokens } from './api-tokens/list-api-tokens.ts';
import { answerRevokeApiToken } from './api-tokens/revoke-api-token.ts';
import { answerBoardMeasure } from './calculations/board-measure.ts';
import { answerCostSheet } from './calculations/cost-sheet.ts';
import { answerCuttingPlan } from './calculations/cutting-plan.ts';
import { answerDepreciationSchedule } from './calculations/depreciation-schedule.ts';
import { answerEarlyPrice } from './calculations/early-price.ts';
import { answerFinishQuantity } from './calculations/finish-quantity.ts';
import { answerLabourRate } from './calculations/labour-rate.ts';
import { answerLearningCurve } from './calculations/learning-curve.ts';
import { answerMachineHourRate } from './calculations/machine-hour-rate.ts';
import { answerOverheadRate } from './calculations/overhead-rate.ts';
import { answerPrice } from './calculations/price.ts';
import { answerPriceWorkbook } from './calculations/price-workbook.ts';
import { answerQuoteTotals } from './calculations/quote-totals.ts';
import { answerResaw } from './calculations/resaw.ts';
import { answerRisk } from './calculations/risk.ts';
import { answerSensitivity } from './calculations/sensitivity.ts';
import { answerSolve } from './calculations/solve.ts';
import { answerWhatIf } from './calculations/what-if.ts';
import { answerCreateClient } from './clients/create-client.ts';
import { answerEditClient } from './clients/edit-client.ts';
import { answerGetClient } from './clients/get-client.ts';
import { answerListClients } from './clients/list-clients.ts';
import { answerRemoveClient } from './clients/remove-client.ts';
import { answerCompareCostSheets } from './cost-sheets/compare-cost-sheets.ts';
import { answerCreateCostSheet } from './cost-sheets/create-cost-sheet.ts';
import { answerDownloadCostSheet } from './cost-sheets/download-cost-sheet.ts';
import { answerEditCostSheet } from './cost-sheets/edit-cost-sheet.ts';
import { answerGetCostSheet } from './cost-sheets/get-cost-sheet.ts';
import { answerGetMaterialPrice } from './cost-sheets/get-material-price.ts';
import { answerListCostSheets } from './cost-sheets/list-cost-sheets.ts';
import { answerRemoveCostSheet } from './cost-sheets/remove-cost-sheet.ts';
import { answerSolveCostSheet } from './cost-sheets/solve-cost-sheet.ts';
import { answerTryCostSheet } from './cost-sheets/try-cost-sheet.ts';
import { answerWorkOutCostSheet } from './cost-sheets/work-out-cost-sheet.ts';
import { answerWorkOutRisk } from './cost-sheets/work-out-risk.ts';
import { answerWorkOutSensitivity } from './cost-sheets/work-out-sensitivity.ts';
import { answerCreateDeliveryNote } from './delivery-notes/create-delivery-note.ts';
import { answerGetDeliveryNote } from './delivery-notes/get-delivery-note.ts';
import { answerListDeliveryNotes } from './delivery-notes/list-delivery-notes.ts';
import { answerLoadDemo } from './demo/load-demo.ts';
import { answerRemoveDemo } from './demo/remove-demo.ts';
import { answerAddDesignPicture } from './designs/add-design-picture.ts';
import { answerCompareDesignRevisions } from './designs/compare-design-revisions.ts';
import { answerCreateDesign } from './designs/create-design.ts';
import { answerEditDesign } from './designs/edit-design.ts';
import { answerEditDesignPictures } from './designs/edit-design-pictures.ts';
import { answerExportBill } from './designs/export-bill.ts';
import { answerGetDesign } from './designs/get-design.ts';
import { answerGetDesignPictures } from './designs/get-design-pictures.ts';
import { answerGetDesignRevision } from './designs/get-design-revision.ts';
import { answerImportBill } from './designs/import-bill.ts';
import { answerListDesignRevisions } from './designs/list-design-revisions.ts';
import { answerListDesigns } from './designs/list-designs.ts';
import { answerRemoveDesign } from './designs/remove-design.ts';
import { answerRestoreDesignRevision } from './designs/restore-design-revision.ts';
import { answerGetDocument } from './documents/get-document.ts';
import { answerAddEnquiryHours } from './enquiries/add-enquiry-hours.ts';
import { answerAddEnquiryPicture } from './enquiries/add-enquiry-picture.ts';
import { answerCreateEnquiry } from './enquiries/create-enquiry.ts';
import { answerEditEnquiry } from './enquiries/edit-enquiry.ts';
import { answerEditEnquiryPictures } from './enquiries/edit-enquiry-pictures.ts';
import { answerGetEarlyPrice } from './enquiries/get-early-price.ts';
import { answerGetEnquiry } from './enquiries/get-enquiry.ts';
import { answerGetEnquiryPictures } from './enquiries/get-enquiry-pictures.ts';
import { answerGetEnquiryResults } from './enquiries/get-enquiry-results.ts';
import { answerGetPastPiece } from './enquiries/get-past-piece.ts';
import { answerKeepEarlyPrice } from './enquiries/keep-early-price.ts';
import { answerListEarlyPrices } from './enquiries/list-early-prices.ts';
import { answerListEnquiries } from './enquiries/list-enquiries.ts';
import { answerListEnquiryHours } from './enquiries/list-enquiry-hours.ts';
import { answerRemoveEnquiry } from './enquiries/remove-enquiry.ts';
import { answerRemoveEnquiryHours } from './enquiries/remove-enquiry-hours.ts';
import { answerCreateExchangeRate } from './exchange-rates/create-exchange-rate.ts';
import { answerListExchangeRates } from './exchange-rates/list-exchange-rates.ts';
import { answerCreditInvoice } from './invoices/credit-invoice.ts';
import { answerEnterPayment } from './invoices/enter-payment.ts';
import { answerGetInvoice } from './invoices/get-invoice.ts';
import { answerGetStatement } from './invoices/get-statement.ts';
import { answerIssueInvoice } from './invoices/issue-invoice.ts';
import { answerListInvoices } from './invoices/list-invoices.ts';
import { answerListOverdue } from './invoices/list-overdue.ts';
import { answerRemind } from './invoices/remind.ts';
import { answerReversePayment } from './invoices/reverse-payment.ts';
import { answerWorkOutInvoice } from './invoices/work-out-invoice.ts';
import { answerCreateLabourGrade } from './labour-grades/create-labour-grade.ts';
import { answerDownloadLabourRates } from './labour-grades/download-labour-rates.ts';
import { answerEditLabourGrade } from './labour-grades/edit-labour-grade.ts';
import { answerGetLabourGrade } from './labour-grades/get-labour-grade.ts';
import { answerGetLabourRates } from './labour-grades/get-labour-rates.ts';
import { answerListLabourGrades } from './labour-grades/list-labour-grades.ts';
import { answerRemoveLabourGrade } from './labour-grades/remove-labour-grade.ts';
import { answerCancelMail } from './mail/cancel-mail.ts';
import { answerGetMail } from './mail/get-mail.ts';
import { answerGetMailService } from './mail/get-mail-service.ts';
import { answerListMails } from './mail/list-mails.ts';
import { answerMailPaper } from './mail/mail-paper.ts';
import { answerProposePaperMail } from './mail/propose-paper-mail.ts';
import { answerResendMail } from './mail/resend-mail.ts';
import { answerCreateMaterial } from './materials/create-material.ts';
import { answerEditMaterial } from './materials/edit-material.ts';
import { answerGetMaterial } from './materials/get-material.ts';
import { answerListMaterials } from './materials/list-materials.ts';
import { answerRemoveMaterial } from './materials/remove-material.ts';
import { answerAcceptOffer } from './offers/accept-offer.ts';
import { answerDeclineOffer } from './offers/decline-offer.ts';
import { answerGetOfferPaper } from './offers/get-offer-paper.ts';
import { answerGetOfferPicture } from './offers/get-offer-picture.ts';
import { answerReadOffer } from './offers/read-offer.ts';
import { answerCreateOverheadAmount } from './overhead/create-overhead-amount.ts';
import { answerDownloadOverheadRecovery } from './overhead/download-overhead-recovery.ts';
import { answerEditOverheadAmount } from './overhead/edit-overhead-amount.ts';
import { answerGetOverheadAmount } from './overhead/get-overhead-amount.ts';
import { answerGetOverheadRecovery } from './overhead/get-overhead-recovery.ts';
import { answerListOverheadAmounts } from './overhead/list-overhead-amounts.ts';
import { answerRemoveOverheadAmount } from './overhead/remove-overhead-amount.ts';
import { answerApplyChanges } from './own-values/apply-changes.ts';
import { answerPreviewChanges } from './own-values/preview-changes.ts';
import { answerTakeBackOwnValue } from './own-values/take-back-own-value.ts';
import { answerCreatePerson } from './people/create-person.ts';
import { answerEditPerson } from './people/edit-person.ts';
import { answerGetPerson } from './people/get-person.ts';
import { answerListPeople } from './people/list-people.ts';
import { answerRemovePerson } from './people/remove-person.ts';
import { answerGetPicture } from './pictures/get-picture.ts';
import { answerUploadPicture } from './pictures/upload-picture.ts';
import { answerDecidePriceImpact } from './price-impacts/decide-price-impact.ts';
import { answerGetPriceImpact } from './price-impacts/get-price-impact.ts';
import { answerListPriceImpactRows } from './price-impacts/list-price-impact-rows.ts';
import { answerListPriceImpacts } from './price-impacts/list-price-impacts.ts';
import { answerWorkOutPriceImpact } from './price-impacts/work-out-price-impact.ts';
import { answerApplyPriceImport } from './price-lists/apply-price-import.ts';
import { answerCreatePriceList } from './price-lists/create-price-list.ts';
import { answerDiscardPriceImport } from './price-lists/discard-price-import.ts';
import { answerGetPriceImport } from './price-lists/get-price-import.ts';
import { answerLinkSupplierItem } from './price-lists/link-supplier-item.ts';
import { answerListMaterialPrices } from './price-lists/list-material-prices.ts';
import { answerListPriceImportRows } from './price-lists/list-price-import-rows.ts';
import { answerListPriceImports } from './price-lists/list-price-imports.ts';
import { answerListPriceLines } from './price-lists/list-price-lines.ts';
import { answerListPriceLists } from './price-lists/list-price-lists.ts';
import { answerListSupplierItems } from './price-lists/list-supplier-items.ts';
import { answerMapPriceImport } from './price-lists/map-price-import.ts';
import { answerPastePriceImport } from './price-lists/paste-price-import.ts';
import { answerStartPriceImport } from './price-lists/start-price-import.ts';
import { answerAcceptQuote } from './quotes/accept-quote.ts';
import { answerAddToQuote } from './quotes/add-to-quote.ts';
import { answerCompareQuote } from './quotes/compare-quote.ts';
import { answerCreateQuote } from './quotes/create-quote.ts';
import { answerDeclineQuote } from './quotes/decline-quote.ts';
import { answerDownloadQuoteLine } from './quotes/download-quote-line.ts';
import { answerEditQuoteDraft } from './quotes/edit-quote-draft.ts';
import { answerGetQuote } from './quotes/get-quote.ts';
import { answerGetQuoteRevision } from './quotes/get-quote-revision.ts';
import { answerListQuotes } from './quotes/list-quotes.ts';
import { answerPreviewQuote } from './quotes/preview-quote.ts';
import { answerPreviewQuotePaper } from './quotes/preview-quote-paper.ts';
import { answerRemoveQuoteDraft } from './quotes/remove-quote-draft.ts';
import { answerRenewOfferLink } from './quotes/renew-offer-link.ts';
import { answerReviseQuote } from './quotes/revise-quote.ts';
import { answerSendQuote } from './quotes/send-quote.ts';
import { answerWithdrawQuote } from './quotes/withdraw-quote.ts';
import { answerWorkOutQuote } from './quotes/work-out-quote.ts';
import { answerWorkOutQuoteDraft } from './quotes/work-out-quote-draft.ts';
import { answerWorkOutQuoteLine } from './quotes/work-out-quote-line.ts';
import { answerCreateScenario } from './scenarios/create-scenario.ts';
import { answerEditScenario } from './scenarios/edit-scenario.ts';
import { answerListScenarios } from './scenarios/list-scenarios.ts';
import { answerRemoveScenario } from './scenarios/remove-scenario.ts';
import { answerWorkOutScenario } from './scenarios/work-out-scenario.ts';
import { answerWorkOutWhatIf } from './scenarios/work-out-what-if.ts';
import { answerGetHealth } from './service/get-health.ts';
import { answerGetReadiness } from './service/get-readiness.ts';
import { answerGetSession } from './sign-in/get-session.ts';
import { answerSetUpOwner } from './sign-in/set-up-owner.ts';
import { answerCreateSupplier } from './suppliers/create-supplier.ts';
import { answerEditSupplier } from './suppliers/edit-supplier.ts';
import { answerGetSupplier } from './suppliers/get-supplier.ts';
import { answerListSuppliers } from './suppliers/list-suppliers.ts';
import { answerRemoveSupplier } from './suppliers/remove-supplier.ts';
import { answerCreateTool } from './tools/create-tool.ts';
import { answerDownloadToolRates } from './tools/download-tool-rates.ts';
import { answerDownloadToolRegister } from './tools/download-tool-register.ts';
import { answerEditTool } from './tools/edit-tool.ts';
import { answerGetTool } from './tools/get-tool.ts';
import { answerGetToolRates } from './tools/get-tool-rates.ts';
import { answerGetToolRegister } from './tools/get-tool-register.ts';
import { answerGetToolSchedule } from './tools/get-tool-schedule.ts';
import { answerListToolRates } from './tools/list-tool-rates.ts';
import { answerListTools } from './tools/list-tools.ts';
import { answerRemoveTool } from './tools/remove-tool.ts';
import { answerChangeRole } from './users/change-role.ts';
import { answerCreateUser } from './users/create-user.ts';
import { answerListUsers } from './users/list-users.ts';
import { answerRemoveUser } from './users/remove-user.ts';
import { answerEditWorkshop } from './workshop/edit-workshop.ts';
import { answerGetWorkshop } from './workshop/get-workshop.ts';

/** The function that answers each contract, one line each. */
export const ALL_HANDLERS: readonly Handler[] = [
  answerGetHealth,
  answerGetReadiness,
  answerGetSession,
  answerSetUpOwner,
  answerListUsers,
  answerCreateUser,
  answerChangeRole,
  answerRemoveUser,
  answerListApiTokens,
  answerCreateApiToken,
  answerRevokeApiToken,
  answerLoadDemo,
  answerRemoveDemo,
  answerListDesigns,
  answerGetDesign,
  answerCreateDesign,
  answerEditDesign,
  answerRemoveDesign,
  answerCompareDesignRevisions,
  answerGetDesignRevision,
  answerListDesignRevisions,
  answerRestoreDesignRevision,
  answerGetDesignPictures,
  answerAddDesignPicture,
  answerEditDesignPictures,
  answerImportBill,
  answerExportBill,
  answerGetDocument,
  answerCancelMail,
  answerGetMail,
  answerGetMailService,
  answerListMails,
  answerMailPaper,
  answerProposePaperMail,
  answerResendMail,
  answerGetPicture,
  answerUploadPicture,
  answerListCostSheets,
  answerGetCostSheet,
  answerGetMaterialPrice,
  answerCreateCostSheet,
  answerEditCostSheet,
  answerRemoveCostSheet,
  answerWorkOutCostSheet,
  answerDownloadCostSheet,
  answerWorkOutRisk,
  answerWorkOutSensitivity,
  answerSolveCostSheet,
  answerApplyChanges,
  answerPreviewChanges,
  answerTakeBackOwnValue,
  answerCreateScenario,
  answerEditScenario,
  answerListScenarios,
  answerRemoveScenario,
  answerWorkOutScenario,
  answerWorkOutWhatIf,
  answerTryCostSheet,
  answerCompareCostSheets,
  answerGetPriceImpact,
  answerWorkOutPriceImpact,
  answerListPriceImpactRows,
  answerListPriceImpacts,
  answerDecidePriceImpact,
  answerEditWorkshop,
  answerGetWorkshop,
  answerCreateTool,
  answerEditTool,
  answerGetTool,
  answerListToolRates,
  answerListTools,
  answerRemoveTool,
  answerCreateLabourGrade,
  answerEditLabourGrade,
  answerGetLabourGrade,
  answerListLabourGrades,
  answerRemoveLabourGrade,
  answerCreatePerson,
  answerEditPerson,
  answerGetPerson,
  answerListPeople,
  answerRemovePerson,
  answerCreateOverheadAmount,
  answerEditOverheadAmount,
  answerGetOverheadAmount,
  answerListOverheadAmounts,
  answerRemoveOverheadAmount,
  answerListEnquiries,
  answerGetEnquiry,
  answerCreateEnquiry,
  answerEditEnquiry,
  answerRemoveEnquiry,
  answerListEnquiryHours,
  answerAddEnquiryHours,
  answerRemoveEnquiryHours,
  answerKeepEarlyPrice,
  answerListEarlyPrices,
  answerGetEarlyPrice,
  answerGetPastPiece,
  answerGetEnquiryResults,
  answerGetEnquiryPictures,
  answerAddEnquiryPicture,
  answerEditEnquiryPictures,
  answerCreateClient,
  answerEditClient,
  answerGetClient,
  answerListClients,
  answerRemoveClient,
  answerDownloadToolRegister,
  answerDownloadToolRates,
  answerGetToolRates,
  answerGetToolRegister,
  answerGetToolSchedule,
  answerGetLabourRates,
  answerDownloadLabourRates,
  answerGetOverheadRecovery,
  answerDownloadOverheadRecovery,
  answerPrice,
  answerPriceWorkbook,
  answerQuoteTotals,
  answerCreateExchangeRate,
  answerListExchangeRates,
  answerCreateMaterial,
  answerEditMaterial,
  answerGetMaterial,
  answerListMaterials,
  answerRemoveMaterial,
  answerApplyPriceImport,
  answerCreatePriceList,
  answerDiscardPriceImport,
  answerGetPriceImport,
  answerLinkSupplierItem,
  answerListMaterialPrices,
  answerListPriceImportRows,
  answerListPriceImports,
  answerListPriceLines,
  answerListPriceLists,
  answerListSupplierItems,
  answerMapPriceImport,
  answerPastePriceImport,
  answerStartPriceImport,
  answerCreateSupplier,
  answerEditSupplier,
  answerGetSupplier,
  answerListSuppliers,
  answerRemoveSupplier,
  answerCostSheet,
  answerCuttingPlan,
  answerBoardMeasure,
  answerDepreciationSchedule,
  answerEarlyPrice,
  answerFinishQuantity,
  answerLabourRate,
  answerLearningCurve,
  answerMachineHourRate,
  answerOverheadRate,
  answerResaw,
  answerRisk,
  answerSensitivity,
  answerSolve,
  answerWhatIf,
  answerAcceptOffer,
  answerDeclineOffer,
  answerGetOfferPaper,
  answerGetOfferPicture,
  answerReadOffer,
  answerCreditInvoice,
  answerEnterPayment,
  answerGetInvoice,
  answerGetStatement,
  answerIssueInvoice,
  answerListInvoices,
  answerListOverdue,
  answerRemind,
  answerReversePayment,
  answerWorkOutInvoice,
  answerCreateDeliveryNote,
  answerGetDeliveryNote,
  answerListDeliveryNotes,
  answerAcceptQuote,
  answerAddToQuote,
  answerCompareQuote,
  answerCreateQuote,
  answerDeclineQuote,
  answerEditQuoteDraft,
  answerGetQuote,
  answerGetQuoteRevision,
  answerListQuotes,
  answerPreviewQuote,
  answerPreviewQuotePaper,
  answerRemoveQuoteDraft,
  answerRenewOfferLink,
  answerReviseQuote,
  answerSendQuote,
  answerWithdrawQuote,
  answerWorkOutQuote,
  answerWorkOutQuoteDraft,
  answerWorkOutQuoteLine,
  answerDownloadQuoteLine,
];
