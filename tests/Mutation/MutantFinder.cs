using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace InstallPacket.Mutation;

/// <summary>Finds the places of a file that can be changed.</summary>
internal sealed class MutantFinder(SemanticModel model, string path) : CSharpSyntaxWalker
{
    private static readonly Dictionary<SyntaxKind, string> Others = new()
    {
        [SyntaxKind.PlusToken] = "-", [SyntaxKind.MinusToken] = "+", [SyntaxKind.AsteriskToken] = "/", [SyntaxKind.SlashToken] = "*",
        [SyntaxKind.LessThanToken] = "<=", [SyntaxKind.LessThanEqualsToken] = "<", [SyntaxKind.GreaterThanToken] = ">=",
        [SyntaxKind.GreaterThanEqualsToken] = ">", [SyntaxKind.EqualsEqualsToken] = "!=", [SyntaxKind.ExclamationEqualsToken] = "==",
        [SyntaxKind.AmpersandAmpersandToken] = "||", [SyntaxKind.BarBarToken] = "&&",
        [SyntaxKind.PlusEqualsToken] = "-=", [SyntaxKind.MinusEqualsToken] = "+=",
    };

    public List<Mutant> Found { get; } = [];

    public override void VisitAttributeList(AttributeListSyntax node)
    {
    }

    public override void VisitBinaryExpression(BinaryExpressionSyntax node)
    {
        base.VisitBinaryExpression(node);
        if (!Others.TryGetValue(node.OperatorToken.Kind(), out var other) || OfText(node)) return;
        var kind = node.OperatorToken.Kind() switch
        {
            SyntaxKind.PlusToken or SyntaxKind.MinusToken or SyntaxKind.AsteriskToken or SyntaxKind.SlashToken => "arithmetic",
            SyntaxKind.AmpersandAmpersandToken or SyntaxKind.BarBarToken => "and-or",
            SyntaxKind.EqualsEqualsToken or SyntaxKind.ExclamationEqualsToken => "equality",
            _ => "comparison",
        };
        Add(node.OperatorToken, other, kind);
    }

    public override void VisitAssignmentExpression(AssignmentExpressionSyntax node)
    {
        base.VisitAssignmentExpression(node);
        if (Others.TryGetValue(node.OperatorToken.Kind(), out var other) && !OfText(node)) Add(node.OperatorToken, other, "arithmetic");
    }

    public override void VisitRelationalPattern(RelationalPatternSyntax node)
    {
        base.VisitRelationalPattern(node);
        if (Others.TryGetValue(node.OperatorToken.Kind(), out var other)) Add(node.OperatorToken, other, "comparison");
    }

    public override void VisitInvocationExpression(InvocationExpressionSyntax node)
    {
        base.VisitInvocationExpression(node);
        if (node.Expression is not MemberAccessExpressionSyntax { Name: IdentifierNameSyntax name }) return;
        var other = name.Identifier.Text switch
        {
            "Min" => "Max", "Max" => "Min", "MinBy" => "MaxBy", "MaxBy" => "MinBy", "Floor" => "Ceiling", "Ceiling" => "Floor",
            "Any" when node.ArgumentList.Arguments.Count == 1 => "All", "All" => "Any", _ => null,
        };
        if (other is not null) Add(name.Identifier, other, "least-most");
    }

    public override void VisitIfStatement(IfStatementSyntax node)
    {
        base.VisitIfStatement(node);
        Negate(node.Condition);
    }

    public override void VisitConditionalExpression(ConditionalExpressionSyntax node)
    {
        base.VisitConditionalExpression(node);
        Negate(node.Condition);
    }

    public override void VisitLiteralExpression(LiteralExpressionSyntax node)
    {
        base.VisitLiteralExpression(node);
        var other = node.Token.Value switch
        {
            int i when i is not (0 or 1) => (i + 1).ToString(CultureInfo.InvariantCulture),
            double d when d is not (0 or 1) => (d * 1.1).ToString("R", CultureInfo.InvariantCulture),
            _ => null,
        };
        if (other is null) return;
        if (node.Token.Value is double && other.All(c => char.IsAsciiDigit(c) || c == '-')) other += ".0";
        Add(node.Token, other, "number");
    }

    private void Negate(ExpressionSyntax condition) =>
        Found.Add(new(condition.SyntaxTree, path, condition.Span, $"!({condition})", "condition"));

    private void Add(SyntaxToken token, string other, string kind) => Found.Add(new(token.SyntaxTree!, path, token.Span, other, kind));

    private bool OfText(ExpressionSyntax node) => model.GetTypeInfo(node).Type is { SpecialType: SpecialType.System_String };
}
