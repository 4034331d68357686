namespace WeedAdvisor.Interview.Files;

/// <summary>An interview that was broken off, as it is offered on screens and line by line.</summary>
/// <param name="Told">What it is.</param>
/// <param name="GoOn">Goes on with it; gives a line to tell when something beside it is wrong.</param>
/// <param name="Decline">Puts it aside; gives a sentence that tells where it is.</param>
public sealed record RecoveryOffer(string Told, Func<string?> GoOn, Func<string> Decline);
